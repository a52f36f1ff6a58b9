/** The demo jobs as they are graded, and the stored reports that they are held against. */
import { readdirSync, readFileSync } from "node:fs";
import type { Dataset, Report } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { gradeJob } from "@underchassis/grading";
import { stableJson } from "@underchassis/report";
import { loadJobFiles } from "../../packages/cli/src/files/loadJobFiles.ts";

const JOBS = "datasets/jobs";

export const DEMO_JOBS: readonly string[] = readdirSync(JOBS).sort();

/** Grades a demo job anew. The version stands for all versions: a release changes no report. */
export function gradeDemo(name: string, dataset: Dataset = loadDataset()): Report {
  const graded = gradeJob(loadJobFiles(`${JOBS}/${name}`), dataset, { toolVersion: "0.0.0" });
  if (!graded.ok) throw new Error(graded.diagnostics.map(({ file, line, message }) => `${file}:${line} ${message}`).join("\n"));
  return graded.report;
}

export const goldenPath = (name: string): string => `tests/jobs/golden/${name}.json`;

/** Significant digits that are stored: more would make every improvement of a solver a change. */
const DIGITS = 5;

function rounded(value: unknown): unknown {
  if (typeof value === "number") return Number(value.toPrecision(DIGITS));
  if (Array.isArray(value)) return value.map(rounded);
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, held]) => [key, rounded(held)]));
}

/** A report as it is stored. */
export const goldenText = (report: Report): string => stableJson(rounded(report) as Report);

export const readGolden = (name: string): Report => JSON.parse(readFileSync(goldenPath(name), "utf8")) as Report;
