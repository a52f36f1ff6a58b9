import { Ajv2020, type ErrorObject, type ValidateFunction } from "ajv/dist/2020.js";
import schema from "../../../../schemas/job.schema.json" with { type: "json" };

export type SchemaError = ErrorObject<string, Record<string, unknown>, unknown>;

const VALIDATOR = { current: undefined as ValidateFunction | undefined };

/**
 * All violations of the job schema, as the validator lists them. The schema is compiled at the first call and kept.
 */
export function violationsOf(job: unknown): SchemaError[] {
  VALIDATOR.current ??= new Ajv2020({ allErrors: true, verbose: true, strict: true, allowUnionTypes: true, strictTypes: false }).compile(
    schema,
  );
  return VALIDATOR.current(job) ? [] : ((VALIDATOR.current.errors ?? []) as SchemaError[]);
}

/** What the schema's text patterns ask for, in words. */
export const PATTERN_WORDS: ReadonlyMap<string, string> = new Map([
  [schema.$defs.id.pattern, "small letters, digits and hyphens, a letter or digit first"],
  [schema.$defs.pointName.pattern, "a name without commas, semicolons, bars and control characters"],
  [schema.$defs.pinName.pattern, "small letters, digits and hyphens, a letter first"],
  [schema.$defs.role.pattern, "letters and digits written together, a small letter first: standbyBypass"],
  [schema.properties.datasetVersion.pattern, "three numbers with points between: 1.4.0"],
]);
