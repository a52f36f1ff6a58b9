/** A problem of the input: where it is, what stood there, what was expected, what would work. */
export interface Diagnostic {
  /** Stable code: `value-unreadable`, `point-unknown`. */
  code: string;
  severity: "error" | "warning";
  file: string;
  /** 1-based; columns count UTF-16 units. Absent when the problem is the file as a whole. */
  line?: number;
  column?: number;
  length?: number;
  /** What is wrong; lower case, no full stop. */
  message: string;
  /** The value as written. */
  received?: string;
  expected?: string;
  /** The nearest thing that would have worked. */
  nearest?: string;
  help?: string;
}

/** A place in a file: 1-based, columns in UTF-16 units. */
export interface Location {
  file: string;
  line: number;
  column: number;
}
