import type { Report } from "@underchassis/dataset";
import { fixtureReport } from "./fixtureReport.ts";

/** A job that holds nothing but its head. For tests only. */
export const emptyReport: Report = {
  ...fixtureReport,
  dataset: { version: "0.3.0" },
  job: {
    title: "Empty",
    file: "job.json",
    assembly: "unknown",
    isolation: "transformer",
    line: fixtureReport.job.line,
    partCount: 0,
    stageCount: 0,
    readingCount: 0,
  },
  cautions: fixtureReport.cautions.slice(0, 1),
  clearance: {
    level: "service",
    meaning: "Nothing that was checked stands against use.",
    holds: [],
    notMade: [],
    steps: [{ level: "service", reached: true, text: "in use" }],
  },
  counts: { danger: 0, replace: 0, adjust: 0, watch: 0, unmeasured: 0, good: 0 },
  findings: [],
  stages: [],
  readings: [],
  expected: [],
  changes: [],
  order: [],
  next: [],
  checks: [],
  sources: [],
  warnings: [],
};
