// Generated from schemas/job.schema.json; run npm run generate. Changes made here are lost.
import type { ErrorObject } from "ajv";

export declare const validate: { (job: unknown): boolean; errors?: ErrorObject[] | null };
