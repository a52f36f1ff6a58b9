export type Severity = "error" | "warning";

/** What is wrong at one place of one file. Lines and columns are 1-based; columns count UTF-16 units; the end lies behind the last character. */
export interface Diagnostic {
  /** Stable code of the rule: UC-402. */
  code: string;
  severity: Severity;
  /** From the repository's root, forward slashes. */
  file: string;
  /** All four or none: none when the fault is the file as a whole. */
  line?: number;
  column?: number;
  endLine?: number;
  endColumn?: number;
  /** What is wrong; lower case, no full stop. */
  message: string;
  expected?: string;
  received?: string;
  /** What to do. */
  help?: string;
  /** The nearest thing that would have worked. */
  nearest?: string;
  /** What `--fix` writes instead; absent where only a person can mend it. */
  fix?: string;
}
