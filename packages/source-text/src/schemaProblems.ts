import { foldErrors } from "./foldErrors.ts";
import { nearestOf } from "./nearest.ts";
import type { Path } from "./path.ts";
import { pointerPath } from "./pointerPath.ts";
import type { Problem } from "./problems.ts";
import type { SchemaError } from "./schemaError.ts";
import { type SchemaWords, schemaSentence } from "./schemaSentence.ts";

/** One violation of a schema in words, with its place in the value. */
export interface SchemaProblem {
  /** The value or key to point at; the nearest that was written where something is missing. */
  at: Path;
  part: "key" | "value";
  /** The path that does not fit; of what is missing, the path that it would have. */
  misshapen: Path;
  problem: Problem;
}

/**
 * The violations of one value, one for each fault of the writer.
 *
 * @param root - the value that was validated
 * @param errors - as the validator listed them
 * @param words - what the format calls things
 * @param where - a path in words
 */
export function schemaProblems(
  root: unknown,
  errors: readonly SchemaError[],
  words: SchemaWords,
  where: (path: Path) => string,
): SchemaProblem[] {
  return withoutEchoes(foldErrors(errors)).map((error) => {
    const path = pointerPath(error.instancePath, root);
    const key = keyOf(error);
    const problem = schemaSentence(error, where(path), words);
    if (key !== undefined) return { at: [...path, key], part: "key", misshapen: [...path, key], problem };
    // What is missing is missing from the thing as a whole: its name is where to look.
    if (error.keyword === "required") return { at: path, part: "key", misshapen: [...path, String(error.params.missingProperty)], problem };
    return { at: path, part: "value", misshapen: path, problem };
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
