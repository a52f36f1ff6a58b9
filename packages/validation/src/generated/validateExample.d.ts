// Generated from schemas/example.schema.json; run npm run generate. Changes made here are lost.
import type { ErrorObject } from "ajv";

export declare const validate: { (record: unknown): boolean; errors?: ErrorObject[] | null };
