import type { TableDescriptions } from "@underchassis/dataset";
import type { TableFile } from "../model/subjects.ts";
import { keyColumns, sameColumns } from "../shared/describedTable.ts";
import { sortedRows } from "../shared/rowOrder.ts";

/** A table with its rows in the order of the key; rows are moved whole. Tables whose columns are not the described ones stay as they are. */
export function withSortedRows(table: TableFile, descriptions: TableDescriptions | undefined): string {
  const { text, rows } = table;
  const order = orderOf(table, descriptions);
  if (order === undefined || order.every((row, index) => row === index) || rows[0] === undefined) return text;
  const start = rows[0].start;
  const line = (row: TableFile["rows"][number]) => text.slice(row.start, row.end).replace(/\n*$/, "\n");
  return text.slice(0, start) + order.map((row) => line(rows[row]!)).join("");
}

function orderOf(table: TableFile, descriptions: TableDescriptions | undefined): number[] | undefined {
  const rows = table.rows.map(({ cells }) => cells.map(({ text }) => text));
  if (table.kind === "sources")
    return rows.map((_, index) => index).sort((a, b) => compareText(rows[a]?.[0] ?? "", rows[b]?.[0] ?? "") || a - b);
  const description = descriptions?.tables.find(({ file }) => `datasets/tables/${file}` === table.path);
  if (description === undefined || !sameColumns(table.header, description)) return undefined;
  return sortedRows(keyColumns(description, descriptions), rows);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
