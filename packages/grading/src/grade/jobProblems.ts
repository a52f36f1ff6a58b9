import type { Dataset } from "@underchassis/dataset";
import type { JobFiles } from "../job/loadedJob.ts";
import { loadJob } from "../job/loadJob.ts";
import { orderDiagnostics } from "../job/orderDiagnostics.ts";
import type { Diagnostic } from "../model/index.ts";
import { resolveJob } from "../resolve/resolveJob.ts";

/** Everything that keeps a job from being read: syntax, shape, references, values. Simulates nothing; what a simulation would show is not told. */
export function jobProblems(files: JobFiles, dataset: Dataset): Diagnostic[] {
  const loaded = loadJob(files, dataset);
  if (!loaded.ok && loaded.job === undefined) return loaded.diagnostics;
  const found = loaded.ok ? loaded.warnings : loaded.diagnostics;
  const job = loaded.job;
  const resolved = job === undefined ? undefined : resolveJob(job, dataset);
  return orderDiagnostics(found, resolved === undefined || resolved.ok ? [] : resolved.diagnostics);
}
