import type { SchemaError } from "./jobSchema.ts";

/**
 * One violation for each fault. A union (`anyOf`) reports every branch that did not fit: of these only what the branch says that
 * the value's own type chose is kept; where the type fits no branch, one violation names all the types that would.
 */
export function foldErrors(errors: readonly SchemaError[]): SchemaError[] {
  const byPath = new Map<string, SchemaError[]>();
  for (const error of errors) {
    // The wrapper of a bad property name repeats what the error inside it says.
    if (error.keyword === "propertyNames") continue;
    const sharing = byPath.get(error.instancePath);
    if (sharing) sharing.push(error);
    else byPath.set(error.instancePath, [error]);
  }
  return [...byPath.values()].flatMap(foldUnion);
}

/** Folds the errors of one value. */
function foldUnion(errors: readonly SchemaError[]): readonly SchemaError[] {
  const union = errors.find(({ keyword }) => keyword === "anyOf");
  if (union === undefined) return errors;
  const branches = Array.isArray(union.schema) ? union.schema.length : 1;
  const refusals = errors.filter(refusesType);
  const rest = errors.filter((error) => error.keyword !== "anyOf" && !refusesType(error));
  if (refusals.length < branches) return rest;
  return [
    { ...refusals[0]!, keyword: "type", params: { type: [...new Set(refusals.flatMap(typesOf))] } },
    ...rest.filter(({ keyword }) => keyword !== "enum"),
  ];
}

/** Whether an error says that a branch takes no values of this type at all. Choices are all texts. */
function refusesType(error: SchemaError): boolean {
  return error.keyword === "type" || (error.keyword === "enum" && typeof error.data !== "string");
}

/** The types that an error asks for. */
export function typesOf(error: SchemaError): string[] {
  if (error.keyword === "enum") return ["string"];
  const { type } = error.params;
  return Array.isArray(type) ? type.map(String) : String(type).split(",");
}
