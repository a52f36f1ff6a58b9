import type { Dataset } from "@underchassis/dataset";
import { type Placed, type Problem, type Problems, spanOf } from "@underchassis/source-text";
import type { Path } from "../loadedJob.ts";
import type { KindClaim } from "../mergeJob.ts";
import type { Survey } from "./survey.ts";

/** Names that must exist somewhere, though the reading lost the place: a row that could not be read may define them. */
export interface Doubt {
  all: boolean;
  names: ReadonlySet<string>;
}

/** What the reference checks work on. */
export interface ReferenceContext {
  job: Placed;
  dataset: Pick<Dataset, "stages">;
  survey: Survey;
  kinds: readonly KindClaim[];
  doubt: Doubt;
  /** Things with a property that the schema refuses, as paths joined by slashes. */
  misshapen: ReadonlySet<string>;
  problems: Problems;
}

/** Reports a fault at a path of the merged job. */
export function report(context: ReferenceContext, path: Path, problem: Problem, part: "key" | "value" = "value"): void {
  context.problems.add(spanOf(context.job.place, path, part), problem);
}

/** Whether a name may be defined by something that could not be read. */
export function isDoubtful({ doubt }: ReferenceContext, name: string): boolean {
  return doubt.all || doubt.names.has(name);
}
