import type { Diagnostic } from "../model/index.ts";

/**
 * Diagnostics of several stages of the reading as one list: by file, line, column and code, each said once. Those of a file as a
 * whole come first in it; the one that counts what is not shown comes last.
 */
export function orderDiagnostics(...lists: readonly (readonly Diagnostic[])[]): Diagnostic[] {
  const distinct = new Map(lists.flat().map((diagnostic) => [keyOf(diagnostic), diagnostic] as const));
  return [...distinct.values()].sort(
    (a, b) =>
      Number(a.code === OMITTED) - Number(b.code === OMITTED) ||
      compareText(a.file, b.file) ||
      (a.line ?? 0) - (b.line ?? 0) ||
      (a.column ?? 0) - (b.column ?? 0) ||
      compareText(a.code, b.code),
  );
}

const OMITTED = "problems-omitted";

function keyOf({ file, line, column, code, message }: Diagnostic): string {
  return JSON.stringify([file, line, column, code, message]);
}

/** Order by code unit: the same on every machine, whatever its language. */
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
