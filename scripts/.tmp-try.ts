import { readFileSync, existsSync, readdirSync } from "node:fs";
import { loadDataset } from "@underchassis/dataset/load";
import { buildModel } from "../packages/grading/src/grade/gradeJob.ts";
import { runChecks } from "../packages/grading/src/grade/runChecks.ts";
const areas = ["resistors", "standby", "readings", "audio", "record", "templates"];
const checks: any[] = [];
for (const a of areas) for (const f of readdirSync(`packages/grading/src/checks/${a}`)) if (!f.endsWith(".test.ts")) { const m = await import(`../packages/grading/src/checks/${a}/${f}`); checks.push(Object.values(m).find((v: any) => v?.run)); }
const dataset = loadDataset();
const name = process.argv[2]!;
const dir = `datasets/jobs/${name}`;
const file = (n: string) => (existsSync(`${dir}/${n}`) ? { name: n, text: readFileSync(`${dir}/${n}`, "utf8") } : undefined);
const files: any = { job: file("job.json"), parts: file("parts.csv"), readings: file("readings.csv") };
for (const k of Object.keys(files)) if (!files[k]) delete files[k];
for (let i = 0; i < 3; i++) {
  const t0 = performance.now();
  const built = buildModel(files, dataset);
  if (!built.ok) { console.log(built.diagnostics); process.exit(1); }
  const t1 = performance.now();
  let total = 0;
  const times: [string, number][] = [];
  const runs = checks.map((c) => { const t = performance.now(); const r = runChecks(built.model, [c])[0]!; times.push([c.id, performance.now() - t]); return r; });
  console.log("build", (t1 - t0).toFixed(0), "checks", (performance.now() - t1).toFixed(0), times.sort((a, b) => b[1] - a[1]).slice(0, 8).map(([n, t]) => `${n} ${t.toFixed(0)}`).join(", "));
  if (i < 2) continue;
  for (const r of runs) { if (r.failure) console.log("FAIL", r.check.id, r.failure);
    for (const f of r.findings) console.log(`[${f.severity}${f.holds ? " >" + f.holds : ""}] ${f.check} ${f.life} ${f.part ?? f.point ?? f.stage ?? ""} | ${f.title}\n    ${f.found} || ${f.shouldBe}\n    why: ${f.why}\n    do: ${f.action}` + (process.argv[3] ? "\n" + f.figures.map((x) => `      ${x.label} = ${x.value} ${x.unit} limit ${x.limit} [${x.how}] ${x.source}`).join("\n") : "")); }
}
