/**
 * What validation costs: 5,000 template files, varied copies of the real ones, and the records that they name, validated without circuits,
 * against reading the same files, `JSON.parse` and the compiled schema alone, in the same process; and how the heap grows from 1,000 to 5,000.
 *
 *     npx tsx --expose-gc scripts/bench-validation.ts [files]
 */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { argv, cpuUsage, memoryUsage } from "node:process";
import type { FileSource } from "@underchassis/validation";
import { diskSource, validateAll } from "@underchassis/validation";
import { validate as validateCaution } from "../packages/validation/src/generated/validateCaution.js";
import { validate as validateFailureNote } from "../packages/validation/src/generated/validateFailureNote.js";
import { validate as validateStage } from "../packages/validation/src/generated/validateStage.js";
import { validate as validateTube } from "../packages/validation/src/generated/validateTube.js";

const VALIDATORS: Readonly<Record<string, (value: unknown) => boolean>> = {
  stages: validateStage,
  tubes: validateTube,
  cautions: validateCaution,
  "failure-notes": validateFailureNote,
};

const COUNT = Number(argv[2] ?? 5000);
const SMALL = Math.min(1000, COUNT);
const ROUNDS = 5;
/** What the design allows. */
const MOST_TIMES = 3;

const real = readdirSync("datasets/stages", { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".json"))
  .map((name) => readFileSync(join("datasets/stages", name), "utf8"));

/** A copy with an id, values and formulas of its own, so that nothing kept from one file serves the next. */
function varied(index: number): { path: string; text: string } {
  const text = real[index % real.length]!;
  const { id, family } = JSON.parse(text) as { id: string; family: string };
  const name = `${id}-${index}`;
  const changed = text
    .replace(`"id": "${id}"`, `"id": "${name}"`)
    // Figures of their own in the formulas that have any; the others recur from template to template, as they do in the real ones.
    .replace(
      /("formula": ")([^\n]*)/g,
      (_, key: string, rest: string) => key + rest.replace(/(\d\.\d+)/g, `$1${"0".repeat(4)}${index + 1}`),
    )
    .replace(/"typical": "(\d+) (uF|kohm)/g, (_, figure: string, unit: string) => `"typical": "${figure}.${index + 1} ${unit}`);
  return { path: `datasets/stages/${family}/${name}.json`, text: changed };
}

function seconds(work: () => void): number {
  const start = cpuUsage();
  work();
  const { user, system } = cpuUsage(start);
  return (user + system) / 1e6;
}

const heapMegabytes = (): number => memoryUsage().heapUsed / 1e6;

/** The files of a folder, as many as wanted, telling the heap's peak as they are read. */
function counted(source: FileSource, most: number, peak?: { megabytes: number }): FileSource {
  let reads = 0;
  return {
    *list() {
      let stages = 0;
      for (const entry of source.list()) {
        if (entry.path.startsWith("datasets/stages/") && ++stages > most) continue;
        yield entry;
      }
    },
    read(path) {
      // Garbage is collected first, so that what is counted is what is kept.
      if (peak !== undefined && ++reads % 500 === 0) {
        globalThis.gc?.();
        peak.megabytes = Math.max(peak.megabytes, heapMegabytes());
      }
      return source.read(path);
    },
  };
}

const root = mkdtempSync(join(tmpdir(), "underchassis-bench-"));
try {
  for (const folder of ["cautions", "failure-notes", "tubes"]) copy(`datasets/${folder}`);
  for (const file of ["datasets/sources.csv", "datasets/manifest.json", "datasets/tables/diodes.csv"]) {
    mkdirSync(join(root, file, ".."), { recursive: true });
    writeFileSync(join(root, file), readFileSync(file));
  }
  for (let index = 0; index < COUNT; index++) {
    const { path, text } = varied(index);
    mkdirSync(join(root, path, ".."), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  const source = diskSource(root);
  let records = 0;
  const plain = (): void => {
    records = 0;
    for (const { path } of source.list()) {
      const validate = VALIDATORS[path.split("/")[1] ?? ""];
      if (validate === undefined) continue;
      records++;
      if (!validate(JSON.parse(new TextDecoder().decode(source.read(path))))) throw new Error(`${path} breaks its schema`);
    }
  };
  const parseOnly = seconds(plain);
  const peaks = new Map<number, number>();
  let found = 0;
  const byCode = new Map<string, number>();
  const once = (files: number): number => {
    globalThis.gc?.();
    byCode.clear();
    return seconds(() => {
      const { diagnostics } = validateAll(counted(source, files));
      found = diagnostics.length;
      for (const { code } of diagnostics) byCode.set(code, (byCode.get(code) ?? 0) + 1);
    });
  };
  once(SMALL);
  globalThis.gc?.();
  const before = heapMegabytes();
  // In turns, so that whatever else the machine is at slows both.
  const rounds = Array.from({ length: ROUNDS }, () => ({ plain: seconds(plain), whole: once(COUNT) }));
  const plainSeconds = Math.min(parseOnly, ...rounds.map((round) => round.plain));
  const wholeSeconds = Math.min(...rounds.map(({ whole }) => whole));
  // The heap in runs of its own: collecting garbage takes time.
  for (const files of [SMALL, COUNT]) {
    const peak = { megabytes: 0 };
    validateAll(counted(source, files, peak));
    peaks.set(files, peak.megabytes);
  }
  const ratio = wholeSeconds / plainSeconds;
  console.log(`${COUNT} template files and ${records - COUNT} records that they name, best of ${ROUNDS}, processor time`);
  console.log(`read, JSON.parse, compiled schema   ${plainSeconds.toFixed(2)} s  ${((1e6 * plainSeconds) / records).toFixed(0)} us a file`);
  console.log(`validation, without circuits        ${wholeSeconds.toFixed(2)} s  ${((1e6 * wholeSeconds) / records).toFixed(0)} us a file`);
  console.log(`ratio                               ${ratio.toFixed(2)} (at most ${MOST_TIMES})`);
  console.log(`findings                            ${found} (${[...byCode].map(([code, count]) => `${code}: ${count}`).join(", ")})`);
  console.log(
    `heap kept, ${SMALL} files              ${(peaks.get(SMALL) ?? 0).toFixed(1)} MB (${before.toFixed(1)} MB with nothing under way)`,
  );
  console.log(
    `heap kept, ${COUNT} files              ${(peaks.get(COUNT) ?? 0).toFixed(1)} MB${globalThis.gc === undefined ? " (run with --expose-gc for what is kept)" : ""}`,
  );
  process.exitCode = ratio > MOST_TIMES ? 1 : 0;
} finally {
  rmSync(root, { recursive: true });
}

function copy(folder: string): void {
  mkdirSync(join(root, folder), { recursive: true });
  for (const name of readdirSync(folder)) writeFileSync(join(root, folder, name), readFileSync(join(folder, name)));
}
