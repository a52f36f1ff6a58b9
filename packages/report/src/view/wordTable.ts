/** A table in words, ready for any renderer: cells are plain text, "" where there is nothing to say. */
export interface WordTable {
  head: readonly string[];
  rows: readonly (readonly string[])[];
}

/** The table without the columns that no row has anything to say in. */
export function withoutEmptyColumns({ head, rows }: WordTable): WordTable {
  const kept = head.map((_, column) => column).filter((column) => rows.some((row) => row[column]));
  const pick = (row: readonly string[]): string[] => kept.map((column) => row[column] ?? "");
  return { head: pick(head), rows: rows.map(pick) };
}
