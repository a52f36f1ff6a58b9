import { readFileSync } from "node:fs";
import { basename } from "node:path";
import type { ColumnDescription, TableDescription, TableDescriptions } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";

export const folder = "datasets/tables";

export const descriptions = JSON.parse(readFileSync(`${folder}/tables.json`, "utf8")) as TableDescriptions;

const { tables } = loadDataset();

/** Rows of a table by its name, as column name to text. */
export function rowsOf(name: string): readonly Record<string, string>[] {
  const rows = tables.get(name);
  if (!rows) throw new Error(`no table ${name}`);
  return rows;
}

/** A table as it stands in its file: column names, then rows of cells. */
export function cellsOf(file: string): { header: string[]; rows: string[][] } {
  const [header = ""] = readFileSync(`${folder}/${file}`, "utf8").split(/\r?\n/, 1);
  return { header: header.split(","), rows: rowsOf(basename(file, ".csv")).map((row) => Object.values(row)) };
}

/** A cell's number; a cell that holds none fails the test that asked. */
export function numberOf(row: Record<string, string>, column: string): number {
  const text = row[column];
  if (text === undefined || text === "" || !Number.isFinite(Number(text)))
    throw new Error(`${column}: no number in ${JSON.stringify(row)}`);
  return Number(text);
}

const among = (column: ColumnDescription): readonly string[] =>
  typeof column.among === "string" ? (descriptions.lists[column.among] ?? []) : (column.among ?? []);

/** What is wrong with one cell; undefined when nothing is. */
export function wrongCell(column: ColumnDescription, cell: string, sources: ReadonlySet<string>): string | undefined {
  if (cell === "") return column.optional ? undefined : "empty";
  const number = Number(cell);
  if (column.type === "number" && !/^-?\d+(\.\d+)?(e-?\d+)?$/.test(cell)) return "not a number";
  if (column.type === "integer" && !Number.isInteger(number)) return "not a whole number";
  if (column.type === "year" && !(Number.isInteger(number) && number >= 1890 && number <= 2100)) return "not a year";
  if (column.type === "choice" && !among(column).includes(cell)) return `not one of ${among(column).join(", ")}`;
  if (column.type === "source" && !sources.has(cell)) return "no such source";
  return undefined;
}

/** Where rows break the order of the key: numbers and choices rise, texts stand together. Row numbers from 1. */
export function unsorted({ key, columns }: TableDescription, header: readonly string[], rows: readonly string[][]): string[] {
  const keyed = key.map((name) => ({ column: columns.find((column) => column.name === name), at: header.indexOf(name) }));
  const wrong: string[] = [];
  const seen = new Set<string>();
  for (const [place, row] of rows.entries()) {
    const before = rows[place - 1];
    const level = before ? keyed.findIndex(({ at }) => before[at] !== row[at]) : 0;
    if (level === -1) wrong.push(`row ${place + 1} repeats the key of the row before`);
    const { column, at } = keyed[level] ?? {};
    if (column && at !== undefined && before && level >= 0 && !rises(column, before[at] ?? "", row[at] ?? ""))
      wrong.push(`row ${place + 1}: ${column.name}`);
    // A group that was left must not come back.
    for (let depth = Math.max(level, 0); depth < keyed.length; depth += 1) {
      const group = keyed
        .slice(0, depth + 1)
        .map((one) => row[one.at])
        .join("\u0000");
      if (seen.has(group)) wrong.push(`row ${place + 1}: its group stands higher up too`);
      seen.add(group);
    }
  }
  return wrong;
}

function rises(column: ColumnDescription, before: string, after: string): boolean {
  if (column.type === "choice") return among(column).indexOf(before) < among(column).indexOf(after);
  if (column.type === "text" || column.type === "source" || before === "") return true;
  return Number(before) < Number(after);
}
