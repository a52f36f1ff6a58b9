import type { ErrorObject } from "ajv";

/** A violation as a validator with `verbose` lists it. */
export type SchemaError = ErrorObject<string, Record<string, unknown>, unknown>;
