import { existsSync, lstatSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Dataset, Report } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { gradeJob, type JobFiles } from "@underchassis/grading";
import type { Bump } from "./bump.ts";
import { bumpOf, compareReports, type ReportChange } from "./compareReports.ts";

/** Folders whose jobs are recorded: every change of the reference is tried on them. */
const FOLDERS = ["datasets/jobs", "datasets/examples"];

/** One recorded job under both datasets. */
export interface JobComparison {
  job: string;
  bump: Bump;
  /** In a word: the same, graded otherwise, or not gradeable by one of them. */
  outcome: "same" | "different" | "refused-now" | "refused-before" | "refused-by-both";
  /** Why a dataset refuses it. */
  message?: string;
  change?: ReportChange;
}

/** Job folders below the recorded ones, by their paths. */
function jobsIn(root: string): string[] {
  return FOLDERS.flatMap((folder) => {
    if (!existsSync(join(root, folder))) return [];
    return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
      .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
      .filter((name) => name.endsWith("/job.json"))
      .map((name) => name.slice(0, -"/job.json".length));
  }).sort();
}

/** Recorded jobs of a tree whose reference did not change. */
export const unchangedJobs = (root: string): JobComparison[] => jobsIn(root).map((job) => ({ job, bump: "none", outcome: "same" }));

function filesOf(root: string, job: string): JobFiles {
  const read = (name: string) => {
    const path = join(root, job, name);
    return existsSync(path) && lstatSync(path).isFile() ? { name: `${job}/${name}`, text: readFileSync(path, "utf8") } : undefined;
  };
  const [main, parts, readings] = [read("job.json"), read("parts.csv"), read("readings.csv")];
  return {
    job: main ?? { name: `${job}/job.json`, text: "" },
    ...(parts === undefined ? {} : { parts }),
    ...(readings === undefined ? {} : { readings }),
  };
}

type Graded = { report: Report } | { message: string };

function grade(files: JobFiles, dataset: Dataset): Graded {
  // The tool's version is the same on both sides and must not count.
  const graded = gradeJob(files, dataset, { toolVersion: "0.0.0" });
  if (graded.ok) return { report: graded.report };
  const { file, line, message } = graded.diagnostics.find(({ severity }) => severity === "error") ?? graded.diagnostics[0]!;
  return { message: `${file}${line === undefined ? "" : `:${line}`}: ${message}` };
}

function compareJob(job: string, files: JobFiles, before: Dataset, after: Dataset): JobComparison {
  const [was, is] = [grade(files, before), grade(files, after)];
  if ("message" in was) return { job, bump: "none", outcome: "message" in is ? "refused-by-both" : "refused-before", message: was.message };
  if ("message" in is) return { job, bump: "major", outcome: "refused-now", message: is.message };
  const change = withoutVersions(compareReports(was.report, is.report));
  const bump = bumpOf(change);
  return bump === "none" ? { job, bump, outcome: "same" } : { job, bump, outcome: "different", change };
}

/** The check that compares versions says something else by its nature. */
function withoutVersions(change: ReportChange): ReportChange {
  return { ...change, findings: change.findings.filter(({ check }) => check !== "dataset-version") };
}

/**
 * Grades every recorded job with two datasets, each job as it was recorded before.
 *
 * @param before folder that holds the earlier datasets/
 * @param after folder that holds the present one
 * @throws DatasetError when one of the datasets cannot be read
 */
export function gradeBoth(before: string, after: string): JobComparison[] {
  const [was, is] = [loadDataset(join(before, "datasets")), loadDataset(join(after, "datasets"))];
  return jobsIn(before).map((job) => compareJob(job, filesOf(before, job), was, is));
}
