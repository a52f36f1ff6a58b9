import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, FileRule } from "../../model/rule.ts";
import { describedTable, type PlacedColumn } from "../../shared/describedTable.ts";

/** Units in which a figure may lie below zero: changes, temperatures. Of all others there is none that is less than nothing. */
const SIGNED: ReadonlySet<string> = new Set(["%", "%/V", "%/1000 h", "ppm/K", "degC", "dB"]);

/** Cells are what their columns say. */
export const tableCells: FileRule = {
  code: "UC-507",
  name: "table-cells",
  scope: "file",
  of: "table",
  severity: "error",
  title: "Every cell is of its column's type, and none is empty that must not be; a table has rows",
  why: "A comma for a point makes a number a text, and the row is lost to every sum.",
  bad: "film,1,6",
  good: "film,1.6",
  check(table, collection) {
    const described = describedTable(table, collection);
    if (described === undefined) return [];
    if (table.rows.length === 0) return [{ message: "a table without rows", expected: "at least one row" }];
    return table.rows.flatMap(({ cells }) =>
      described.columns.flatMap((column): Complaint[] => {
        const cell = cells[column.at];
        if (cell === undefined) return [];
        const fault = faultOf(column, cell.text);
        return fault === undefined ? [] : [{ at: cell.span, ...fault, received: cell.text }];
      }),
    );
  },
};

function faultOf(
  { column, among }: PlacedColumn,
  text: string,
): { message: string; expected: string; nearest?: string | undefined } | undefined {
  const where = `the column "${column.name}"${column.unit === undefined ? "" : ` (${column.unit})`}`;
  if (text === "") return column.optional === true ? undefined : { message: `an empty cell in ${where}`, expected: column.meaning };
  const number = Number(text);
  if (number < 0 && column.unit !== undefined && !SIGNED.has(column.unit))
    return { message: `a figure below zero in ${where}`, expected: "zero or more" };
  switch (column.type) {
    case "number":
      if (/^-?\d+(\.\d+)?(e-?\d+)?$/.test(text)) return undefined;
      return { message: `no number in ${where}`, expected: "a plain number: 0.5, 47, 1e-06", ...comma(text) };
    case "integer":
      return Number.isInteger(number) ? undefined : { message: `no whole number in ${where}`, expected: "a whole number" };
    case "year":
      if (Number.isInteger(number) && number >= 1890 && number <= 2100) return undefined;
      return { message: `no year in ${where}`, expected: "a year from 1890 to 2100" };
    case "choice":
      // A list that is not there has no choices; tables.json is told of it.
      if (among.length === 0 || among.includes(text)) return undefined;
      return { message: `none of the choices of ${where}`, expected: oneOf(among, 30), nearest: nearestOf(text, among) };
    case "text":
    case "source":
      return undefined;
  }
}

/** Whoever writes a comma for the point means the point. */
function comma(text: string): { nearest?: string } {
  const pointed = text.replace(",", ".").replace(/\s/g, "");
  return pointed !== text && /^-?\d+(\.\d+)?$/.test(pointed) ? { nearest: pointed } : {};
}
