import { readFileSync, existsSync } from "node:fs";
import { loadDataset } from "@underchassis/dataset/load";
import { buildModel } from "../packages/grading/src/grade/gradeJob.ts";
const dataset = loadDataset();
for (const name of ["tide-hut-transmitter", "lantern-room-receiver"]) {
const dir = `datasets/jobs/${name}`;
const file = (n: string) => (existsSync(`${dir}/${n}`) ? { name: n, text: readFileSync(`${dir}/${n}`, "utf8") } : undefined);
const files: any = { job: file("job.json"), parts: file("parts.csv"), readings: file("readings.csv") };
for (const k of Object.keys(files)) if (!files[k]) delete files[k];
for (let i = 0; i < 4; i++) {
  const built = buildModel(files, dataset); if (!built.ok) throw 1;
  const m = built.model;
  const t = (label: string, f: () => void) => { const a = performance.now(); f(); console.log(`  ${label} ${(performance.now() - a).toFixed(1)}`); };
  if (i < 3) { m.solve({life:"restored",condition:"operating",line:"high"}); m.sensitivities({life:"restored",condition:"operating",line:"high"}); continue; }
  console.log(name, m.solve({life:"restored",condition:"operating",line:"actual"}).ok);
  for (const l of ["designed","found","restored","planned"] as const) for (const c of ["tubes-out","standby","operating"]) {
    t(`solve ${l} ${c} high`, () => m.solve({ life: l, condition: c, line: "high" }));
  }
  t("sens restored operating high", () => m.sensitivities({ life: "restored", condition: "operating", line: "high" }));
  t("sens designed operating design", () => m.sensitivities({ life: "designed", condition: "operating", line: "design" }));
  t("sens designed tubes-out design", () => m.sensitivities({ life: "designed", condition: "tubes-out", line: "design" }));
  t("cold", () => m.predict({ life: "restored", condition: "cold", line: "actual" }, { quantity: "ohms", at: "B+", to: "chassis" }));
  console.log(m.compile({ life: "restored", condition: "operating", line: "high" }).network.elements.length, m.compile({ life: "restored", condition: "operating", line: "high" }).uncertain.length);
}}
