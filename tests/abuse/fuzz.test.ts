import fc from "fast-check";
import { expect, it } from "vitest";
import { SOUND_JOB, TEST_DATASET } from "../../packages/grading/src/job/fixtures.ts";
import type { JobFiles } from "../../packages/grading/src/job/loadedJob.ts";
import { loadJob } from "../../packages/grading/src/job/loadJob.ts";

const PARTS =
  'stage,role,name,kind,from,to,marked,measured,fitted,planned,note\nsupply,bleeder,R1,,,,100k,"130k",100k 5W,yes,drifted\n,,C9,capacitor,B+,chassis,.05 600V,,,,"two\nlines"\n';
const READINGS = "at,to,quantity,condition,value\nB+,,V DC,operating,285 V\nV1 plate,chassis,VAC,,3\n";
const RUNS = 300;

/** Pieces that parsers trip over. */
const PIECES = fc.oneof(
  fc.constantFrom(
    '"',
    "'",
    ",",
    ":",
    "{",
    "}",
    "[",
    "]",
    "\\",
    "\n",
    "\r\n",
    ";",
    "\t",
    "\u0000",
    "\u202e",
    "\ud800",
    "//",
    "/*",
    "1e999",
    "-",
    "null",
    "true",
    "[]",
    "{}",
    '""',
    '"__proto__":',
    "\uFEFF",
  ),
  fc.string({ maxLength: 6 }),
);

/** A text with a few stretches cut out, doubled or replaced. */
function mutated(text: string): fc.Arbitrary<string> {
  const edit = fc.record({ at: fc.nat(text.length), length: fc.nat(12), piece: PIECES, twice: fc.boolean() });
  return fc.array(edit, { minLength: 1, maxLength: 4 }).map((edits) =>
    edits.reduce((current, { at, length, piece, twice }) => {
      const start = Math.min(at, current.length);
      const cut = current.slice(start, start + length);
      return current.slice(0, start) + (twice ? cut + cut : piece) + current.slice(start + length);
    }, text),
  );
}

/** What must hold of every answer, whatever the files. */
function judge(files: JobFiles): void {
  const result = loadJob(files, TEST_DATASET);
  const diagnostics = result.ok ? result.warnings : result.diagnostics;
  expect(result.ok).toBe(diagnostics.every(({ severity }) => severity === "warning"));
  const textOf = new Map(Object.values(files).map(({ name, text }) => [name, text] as const));
  for (const { file, line, column, message } of diagnostics) {
    expect(message).not.toMatch(/undefined|\[object/);
    if (line === undefined || column === undefined) continue;
    const lines = textOf
      .get(file)!
      .replace(/^\uFEFF/, "")
      .split(/\r\n|\n|\r/);
    expect(line).toBeLessThanOrEqual(lines.length);
    expect(column).toBeLessThanOrEqual(lines[line - 1]!.length + 2);
  }
  const order = diagnostics.map(
    ({ file, line = 0, column = 0 }) => `${file} ${String(line).padStart(6, "0")} ${String(column).padStart(6, "0")}`,
  );
  expect(order).toEqual(order.toSorted());
}

it("never throws at mutated job texts, and points inside them", () => {
  fc.assert(
    fc.property(mutated(SOUND_JOB), (text) => judge({ job: { name: "job.json", text } })),
    { numRuns: RUNS, seed: 6550 },
  );
});

it("never throws at mutated tables, and points inside them", () => {
  fc.assert(
    fc.property(mutated(PARTS), mutated(READINGS), (parts, readings) =>
      judge({
        job: { name: "job.json", text: SOUND_JOB },
        parts: { name: "parts.csv", text: parts },
        readings: { name: "readings.csv", text: readings },
      }),
    ),
    { numRuns: RUNS, seed: 6551 },
  );
});

/** A copy of a job in which values here and there have been exchanged for others of any kind. */
function reshaped(value: unknown, depth = 0): fc.Arbitrary<unknown> {
  const other = fc.oneof(
    { depthSize: "small" },
    fc.constantFrom(null, true, 0, -1, "", "B+", "R9", "supply", [], {}),
    fc.jsonValue({ maxDepth: 2 }),
  );
  const kept: fc.Arbitrary<unknown> = Array.isArray(value)
    ? fc.tuple(...value.map((item) => reshaped(item, depth + 1)))
    : typeof value === "object" && value !== null
      ? fc.record(Object.fromEntries(Object.entries(value).map(([name, member]) => [name, reshaped(member, depth + 1)])))
      : fc.constant(value);
  return depth === 0 ? kept : fc.oneof({ weight: 30, arbitrary: kept }, { weight: 1, arbitrary: other });
}

it("never throws at sound JSON of any shape", () => {
  fc.assert(
    fc.property(reshaped(JSON.parse(SOUND_JOB)), (job) => judge({ job: { name: "job.json", text: JSON.stringify(job, null, 2) } })),
    { numRuns: RUNS, seed: 6552 },
  );
});
