import type { Dataset, Job } from "@underchassis/dataset";
import {
  lengthOnLine,
  locationOf,
  type Placed,
  Problems,
  readFileText,
  readJson,
  reportUnprintable,
  spanOf,
  textsIn,
} from "@underchassis/source-text";
import type { Diagnostic } from "../model/index.ts";
import { checkShape } from "./checkShape.ts";
import { JOB_LIMITS } from "./jobLimits.ts";
import type { JobFiles, LoadedJob, Path } from "./loadedJob.ts";
import { mergeTables } from "./mergeJob.ts";
import { readPartsTable } from "./partsTable.ts";
import { readReadingsTable } from "./readingsTable.ts";
import type { Doubt } from "./references/context.ts";
import { REFERENCE_CHECKS } from "./references/index.ts";
import { survey } from "./references/survey.ts";

/** A job that can be worked on, or everything that is wrong with it. */
type LoadResult =
  | { ok: true; job: LoadedJob; warnings: Diagnostic[] }
  /** `job`: there where nothing in it has the wrong shape, so that its values can be read and their problems be told in the same run. */
  | { ok: false; diagnostics: Diagnostic[]; job?: LoadedJob };

/**
 * Reads a job and its tables, merges them, and checks syntax, shape and references in one run. Values (markings, quantities) are
 * not read here. A job file with broken syntax is not looked into further; its tables still are.
 *
 * @param files - the job file and, where they exist, its tables, as text
 * @param dataset - the stage templates that the job may name
 * @returns the merged job with the place of everything in it; or the diagnostics by file, line and column, warnings among them
 */
export function loadJob(files: JobFiles, dataset: Pick<Dataset, "stages">): LoadResult {
  const problems = new Problems();
  const jobText = readFileText(files.job, JOB_LIMITS, problems);
  const job = jobText && readJson(jobText, JOB_LIMITS, problems);
  const partsText = files.parts && readFileText(files.parts, JOB_LIMITS, problems);
  const parts = partsText ? readPartsTable(partsText, problems) : { rows: [], lost: files.parts ? ("all" as const) : [] };
  const readingsText = files.readings && readFileText(files.readings, JOB_LIMITS, problems);
  const readings = readingsText ? readReadingsTable(readingsText, problems) : [];
  if (job === undefined) return { ok: false, diagnostics: problems.list() };

  const merged = mergeTables(job, parts.rows, readings, problems);
  reportUnprintable(job, problems);
  const misshapen = checkShape(job, problems);
  const doubt: Doubt = {
    all: parts.lost === "all",
    names: new Set([
      ...(parts.lost === "all" ? [] : parts.lost),
      ...merged.lost,
      ...misshapen.flatMap((path) => textsIn(valueAt(job.value, path))),
    ]),
  };
  const context = {
    job,
    dataset,
    survey: survey(job.value, dataset),
    kinds: merged.kinds,
    doubt,
    misshapen: new Set(misshapen.map(parentKey)),
    problems,
  };
  for (const check of REFERENCE_CHECKS) check(context);
  return problems.errors > 0
    ? { ok: false, diagnostics: problems.list(), ...(misshapen.length === 0 ? { job: loaded(job, files) } : {}) }
    : { ok: true, job: loaded(job, files), warnings: problems.list() };
}

function loaded(placed: Placed, files: JobFiles): LoadedJob {
  return {
    // The schema has been satisfied, and the type is generated from it.
    job: placed.value as Job,
    files,
    locate: (path, part = "value") => locationOf(spanOf(placed.place, path, part)),
    lengthOf: (path) => lengthOnLine(spanOf(placed.place, path)),
  };
}

function valueAt(root: unknown, path: Path): unknown {
  let value = root;
  for (const step of path)
    value = typeof value === "object" && value !== null ? (value as Record<string | number, unknown>)[step] : undefined;
  return value;
}

/** The thing that a misshapen property belongs to. */
function parentKey(path: Path): string {
  return path.slice(0, -1).join("/");
}
