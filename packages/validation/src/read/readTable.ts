import { isTableKind } from "../model/fileKind.ts";
import type { RawFile, TableFile } from "../model/subjects.ts";

/** Splits a table into its header and rows; undefined when its quoting cannot be followed or it has no header. Blank lines are left out. */
export function readTable(file: RawFile): TableFile | undefined {
  if (!isTableKind(file.kind)) return undefined;
  const [header, ...rows] = file.rows();
  if (header === undefined) return undefined;
  return {
    path: file.path,
    kind: file.kind,
    text: file.source().text,
    header: header.cells,
    rows: rows.filter(({ cells }) => cells.some(({ text }) => text !== "")),
  };
}
