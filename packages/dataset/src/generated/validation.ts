// Generated from schemas/validation.schema.json; run npm run generate. Changes made here are lost.

/**
 * What a validation of the datasets found: the output of npm run validate -- --format json.
 */
export interface ValidationReport {
  /**
   * Version of this format.
   */
  formatVersion: 1;
  /**
   * Files looked at.
   */
  files: number;
  /**
   * Templates simulated and jobs graded; 0 without --electrical.
   */
  simulated: number;
  /**
   * Errors among the diagnostics.
   */
  errors: number;
  /**
   * Warnings among the diagnostics.
   */
  warnings: number;
  /**
   * Findings beyond those that are kept.
   */
  omitted: number;
  /**
   * Errors first, causes before what follows from them, then by place.
   */
  diagnostics: ValidationReportDiagnostic[];
}
/**
 * What is wrong at one place of one file.
 */
export interface ValidationReportDiagnostic {
  /**
   * Code of the rule, stable for ever.
   */
  code: string;
  /**
   * Both make the command exit 1.
   */
  severity: "error" | "warning";
  /**
   * From the repository's root, forward slashes.
   */
  file: string;
  /**
   * 1-based; absent when the fault is the file as a whole.
   */
  line?: number;
  /**
   * 1-based, in UTF-16 units.
   */
  column?: number;
  /**
   * Line of the end.
   */
  endLine?: number;
  /**
   * Column behind the last character.
   */
  endColumn?: number;
  /**
   * What is wrong.
   */
  message: string;
  /**
   * What would be right.
   */
  expected?: string;
  /**
   * What stands there.
   */
  received?: string;
  /**
   * What to do.
   */
  help?: string;
  /**
   * The nearest thing that would have worked.
   */
  nearest?: string;
  /**
   * The command that mends it.
   */
  fix?: string;
}
