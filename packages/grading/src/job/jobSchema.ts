import type { SchemaError } from "@underchassis/source-text";
import schema from "../../../../schemas/job.schema.json" with { type: "json" };
import { validate } from "./generated/validateJob.js";

/** All violations of the job schema, as the validator lists them. */
export function violationsOf(job: unknown): SchemaError[] {
  return validate(job) ? [] : ((validate.errors ?? []) as SchemaError[]);
}

/** What the schema's text patterns ask for, in words. */
export const PATTERN_WORDS: ReadonlyMap<string, string> = new Map([
  [schema.$defs.id.pattern, "small letters, digits and hyphens, a letter or digit first"],
  [schema.$defs.pointName.pattern, "a name without commas, semicolons, bars and control characters"],
  [schema.$defs.pinName.pattern, "small letters, digits and hyphens, a letter first"],
  [schema.$defs.role.pattern, "letters and digits written together, a small letter first: standbyBypass"],
  [schema.properties.datasetVersion.pattern, "three numbers with points between: 1.4.0"],
]);
