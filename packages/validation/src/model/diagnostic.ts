import type { ValidationReportDiagnostic } from "@underchassis/dataset";

/**
 * What is wrong at one place of one file, as schemas/validation.schema.json has it. The message is in lower case without a full stop; line,
 * column and both ends are there together or not at all.
 */
export type Diagnostic = ValidationReportDiagnostic;
export type Severity = Diagnostic["severity"];
