import type { Job } from "@underchassis/dataset";
import type { Path } from "@underchassis/source-text";
import type { Location } from "../model/index.ts";

export type { Path };

/** The files of one job as text. */
export interface JobFiles {
  job: { name: string; text: string };
  parts?: { name: string; text: string };
  readings?: { name: string; text: string };
}

/** A job whose tables are merged in, with the place where each of its values was written. */
export interface LoadedJob {
  job: Job;
  files: JobFiles;
  /** File, line and column of a value (or of its key); the nearest enclosing place when the path itself was never written. */
  locate(path: Path, part?: "key" | "value"): Location;
  /** How long that place is on its line. */
  lengthOf(path: Path): number;
}
