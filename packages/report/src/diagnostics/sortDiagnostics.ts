import type { Diagnostic } from "@underchassis/grading";

const compare = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);

/** The count of what is not shown speaks of "the ones above", so it stands last. */
const isCount = ({ code }: Diagnostic): number => (code === "problems-omitted" ? 1 : 0);

/**
 * A copy ordered by file, line, column, code and message; a problem of a whole file comes before those within it, the count of
 * problems that are not shown after all others.
 */
export function sortDiagnostics(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  return [...diagnostics].sort(
    (one, other) =>
      isCount(one) - isCount(other) ||
      compare(one.file, other.file) ||
      (one.line ?? 0) - (other.line ?? 0) ||
      (one.column ?? 0) - (other.column ?? 0) ||
      compare(one.code, other.code) ||
      compare(one.message, other.message),
  );
}
