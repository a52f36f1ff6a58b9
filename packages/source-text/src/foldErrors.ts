import type { SchemaError } from "./schemaError.ts";

/**
 * One violation for each fault. A union (`anyOf`, `oneOf`) reports every branch that did not fit: of these only what the branch says that
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
  const union = errors.find(isUnion);
  if (union === undefined) return errors;
  const branches = Array.isArray(union.schema) ? union.schema.length : 1;
  const refusals = errors.filter(refusesType);
  const rest = errors.filter((error) => !isUnion(error) && !refusesType(error));
  const missing = alternatives(union);
  // One of several properties will do: that none is there is one fault.
  if (missing !== undefined)
    return [
      { ...union, keyword: "required", params: { missingProperty: missing[0], among: missing } },
      ...rest.filter(({ keyword, params }) => keyword !== "required" || !missing.includes(String(params.missingProperty))),
    ];
  if (refusals.length < branches) return rest;
  return [
    { ...refusals[0]!, keyword: "type", params: { type: [...new Set(refusals.flatMap(typesOf))] } },
    ...rest.filter(({ keyword }) => keyword !== "enum"),
  ];
}

function isUnion({ keyword }: SchemaError): boolean {
  return keyword === "anyOf" || keyword === "oneOf";
}

/** The properties of a union whose branches only ask that one of them be there. */
function alternatives({ schema }: SchemaError): string[] | undefined {
  if (!Array.isArray(schema)) return undefined;
  const names = schema.flatMap((branch: { required?: unknown }) =>
    Array.isArray(branch.required) && branch.required.length === 1 && Object.keys(branch).length === 1 ? [String(branch.required[0])] : [],
  );
  return names.length === schema.length ? names : undefined;
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
