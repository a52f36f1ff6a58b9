/** The benchmark's chassis: their jobs, their first readings, and which half each belongs to. */
import { readdirSync, readFileSync } from "node:fs";
import type { Dataset, Job } from "@underchassis/dataset";
import { buildModel } from "@underchassis/grading";
import type { ChassisModel } from "../../packages/grading/src/model/index.ts";

const FOLDER = new URL("./chassis/", import.meta.url);

/** First readings that a bench takes: DC at five points, ripple at two. */
export interface Play {
  condition: "operating";
  dc: readonly string[];
  ripple: readonly string[];
}

export type Half = "tune" | "report";

/** All chassis in alphabetical order. */
export const CHASSIS_IDS: readonly string[] = readdirSync(FOLDER).sort();

/** Every second chassis of the alphabet is for reporting; the others may be looked at while the search is tuned. */
export function halfOf(id: string): Half {
  const index = CHASSIS_IDS.indexOf(id);
  if (index < 0) throw new Error(`no chassis ${id}; there are ${CHASSIS_IDS.join(", ")}`);
  return index % 2 === 0 ? "tune" : "report";
}

export function readChassis(id: string): { job: Job; play: Play } {
  const text = (name: string): string => readFileSync(new URL(`${id}/${name}.json`, FOLDER), "utf8");
  return { job: JSON.parse(text("job")) as Job, play: JSON.parse(text("play")) as Play };
}

/** @throws Error with every diagnostic when the job cannot be read */
export function modelOfJob(job: Job, dataset: Dataset): ChassisModel {
  const built = buildModel({ job: { name: "job.json", text: JSON.stringify(job) } }, dataset);
  if (!built.ok) throw new Error(built.diagnostics.map(({ message, received }) => `${message} (${received})`).join("\n"));
  return built.model;
}
