import type { Dataset, Job } from "@underchassis/dataset";
import type { LoadedJob } from "../job/loadedJob.ts";
import type { ChassisModel } from "../model/index.ts";
import { resolveJob } from "../resolve/resolveJob.ts";
import { chassisModel } from "../simulate/simulator.ts";
import { smallDataset } from "./smallDataset.ts";

/** What a test must say of a job; the rest is filled in. */
export type TestJob = Partial<Omit<Job, "chassis">> & { chassis?: Partial<Job["chassis"]> };

/**
 * The model of a small job, for tests: a 120 V 60 Hz set of 1950 unless told otherwise.
 *
 * @throws Error with every diagnostic when the job cannot be resolved
 */
export function modelOf(job: TestJob, dataset: Dataset = smallDataset()): ChassisModel {
  const full: Job = { format: 1, title: "test", ...job, chassis: { era: 1950, line: { designVolts: "120 V", hertz: 60 }, ...job.chassis } };
  const loaded: LoadedJob = {
    job: full,
    files: { job: { name: "job.json", text: "" } },
    locate: () => ({ file: "job.json", line: 1, column: 1 }),
    lengthOf: () => 1,
  };
  const resolved = resolveJob(loaded, dataset);
  if (!resolved.ok)
    throw new Error(resolved.diagnostics.map((problem) => `${problem.code}: ${problem.message} (${problem.received ?? ""})`).join("\n"));
  return chassisModel(resolved.data);
}
