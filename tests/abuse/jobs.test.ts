import { loadDataset } from "@underchassis/dataset/load";
import { gradeJob } from "@underchassis/grading";
import { describe, expect, it } from "vitest";
import { TEST_DATASET } from "../../packages/grading/src/job/fixtures.ts";
import type { JobFiles } from "../../packages/grading/src/job/loadedJob.ts";
import { loadJob } from "../../packages/grading/src/job/loadJob.ts";
import { type AbuseCase, edited, type Mark, takeMarks } from "./case.ts";
import { REFERENCE_CASES } from "./cases/references.ts";
import { SHAPE_CASES } from "./cases/shape.ts";
import { SYNTAX_CASES } from "./cases/syntax.ts";
import { TABLE_CASES } from "./cases/tables.ts";

const SECONDS = 2;
const ALL_CASES = [...SYNTAX_CASES, ...SHAPE_CASES, ...TABLE_CASES, ...REFERENCE_CASES];

function filesOf(abuse: AbuseCase): { files: JobFiles; marks: Mark[] } {
  const marks: Mark[] = [];
  const take = (name: string, marked: string | undefined) => {
    if (marked === undefined) return undefined;
    const taken = takeMarks(name, marked);
    marks.push(...taken.marks);
    return { name, text: taken.text };
  };
  const job = take("job.json", abuse.job ?? edited())!;
  const parts = take("parts.csv", abuse.parts);
  const readings = take("readings.csv", abuse.readings);
  return { files: { job, ...(parts ? { parts } : {}), ...(readings ? { readings } : {}) }, marks };
}

function run(abuse: AbuseCase) {
  const { files, marks } = filesOf(abuse);
  // Processor time: how busy the machine is with other things does not count.
  const start = process.cpuUsage();
  const result = loadJob(files, TEST_DATASET);
  const { user, system } = process.cpuUsage(start);
  return { result, marks, seconds: (user + system) / 1e6 };
}

const place = ({ file, line, column, code }: { file: string; line?: number; column?: number; code: string }) =>
  `${file}:${line ?? 0}:${column ?? 0} ${code}`;

describe.each([
  ["syntax", SYNTAX_CASES],
  ["shape", SHAPE_CASES],
  ["tables", TABLE_CASES],
  ["references", REFERENCE_CASES],
] as const)("%s", (_area, cases) => {
  it.each(cases.map((abuse) => [abuse.name, abuse] as const))("%s", (_name, abuse) => {
    const { result, marks, seconds } = run(abuse);
    const diagnostics = result.ok ? result.warnings : result.diagnostics;
    const expected = [...marks, ...(abuse.whole ?? [])].map(place);
    expect(diagnostics.map(place).sort()).toEqual(expected.sort());
    for (const mark of marks) {
      const told = diagnostics.filter((diagnostic) => place(diagnostic) === place(mark) && diagnostic.message.includes(mark.fragment));
      expect(told, `${place(mark)}: ${mark.fragment}`).not.toHaveLength(0);
    }
    expect(result.ok).toBe(diagnostics.every(({ severity }) => severity === "warning"));
    expect(seconds).toBeLessThan(SECONDS);
  });
});

it("holds no case twice", () => {
  const names = [SYNTAX_CASES, SHAPE_CASES, TABLE_CASES, REFERENCE_CASES].flatMap((cases, area) =>
    cases.map(({ name }) => `${area} ${name}`),
  );
  expect(new Set(names).size).toBe(names.length);
  expect(names.length).toBeGreaterThanOrEqual(40);
});

it("brings no bad job further than the reader in a whole grading, and throws at none", () => {
  const shared = loadDataset();
  const dataset = { ...shared, stages: new Map([...shared.stages, ...TEST_DATASET.stages]) };
  for (const abuse of ALL_CASES) {
    const { files } = filesOf(abuse);
    const read = loadJob(files, dataset);
    const graded = gradeJob(files, dataset, { toolVersion: "0.0.0" });
    if (!read.ok) {
      // Beside what the reader found there may be values that nobody can read.
      expect(graded.ok, abuse.name).toBe(false);
      if (!graded.ok) expect(graded.diagnostics, abuse.name).toEqual(expect.arrayContaining(read.diagnostics));
    } else if (!graded.ok) expect(graded.diagnostics.length, abuse.name).toBeGreaterThan(0);
  }
}, 120_000);
