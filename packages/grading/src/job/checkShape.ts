import { foldErrors } from "./foldErrors.ts";
import { type SchemaError, violationsOf } from "./jobSchema.ts";
import type { Path } from "./loadedJob.ts";
import { nearestOf } from "./nearest.ts";
import { pathWords } from "./pathWords.ts";
import { type Placed, spanOf } from "./place.ts";
import { pointerPath } from "./pointerPath.ts";
import type { Problems } from "./problems.ts";
import { schemaSentence } from "./schemaSentence.ts";

/**
 * Holds the merged job against its schema and reports every fault at the exact key or value.
 *
 * @returns the paths of what does not fit
 */
export function checkShape(job: Placed, problems: Problems): Path[] {
  const errors = withoutEchoes(foldErrors(violationsOf(job.value)));
  return errors.map((error) => {
    const path = pointerPath(error.instancePath, job.value);
    const key = keyOf(error);
    const sentence = schemaSentence(error, pathWords(path, job.value));
    if (key !== undefined) problems.add(spanOf(job.place, [...path, key], "key"), sentence);
    // What is missing is missing from the thing as a whole: its name is where to look.
    else problems.add(spanOf(job.place, path, error.keyword === "required" ? "key" : "value"), sentence);
    return error.keyword === "required" ? [...path, String(error.params.missingProperty)] : key === undefined ? path : [...path, key];
  });
}

/** The property whose name is at fault, when it is a name. */
function keyOf(error: SchemaError): string | undefined {
  if (error.keyword === "additionalProperties") return String(error.params.additionalProperty);
  return error.propertyName;
}

/** Drops the complaint about a missing property that merely was misspelt. */
function withoutEchoes(errors: readonly SchemaError[]): SchemaError[] {
  const misspelt = new Map<string, string[]>();
  for (const error of errors) {
    if (error.keyword !== "additionalProperties") continue;
    const names = misspelt.get(error.instancePath) ?? [];
    names.push(String(error.params.additionalProperty));
    misspelt.set(error.instancePath, names);
  }
  return errors.filter((error) => {
    if (error.keyword !== "required") return true;
    const missing = String(error.params.missingProperty);
    return !misspelt.get(error.instancePath)?.some((name) => nearestOf(name, [missing]) !== undefined);
  });
}
