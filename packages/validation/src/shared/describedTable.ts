import type { ColumnDescription, TableDescription, TableDescriptions } from "@underchassis/dataset";
import type { Cell } from "@underchassis/source-text";
import type { Collection, TableFile } from "../model/subjects.ts";

/** A column with where it stands in its table. */
export interface PlacedColumn {
  column: ColumnDescription;
  at: number;
  /** What a choice may be. */
  among: readonly string[];
}

/** A table beside what tables.json says of it. */
export interface DescribedTable {
  description: TableDescription;
  columns: readonly PlacedColumn[];
  key: readonly PlacedColumn[];
}

/** The description of a table; undefined when there is none. */
export function descriptionOf(table: TableFile, { descriptions }: Collection): TableDescription | undefined {
  return descriptions?.tables.find(({ file }) => `datasets/tables/${file}` === table.path);
}

/** The table beside its description, when its columns are those described; undefined otherwise, which another rule says. */
export function describedTable(table: TableFile, collection: Collection): DescribedTable | undefined {
  const description = descriptionOf(table, collection);
  if (description === undefined || !sameColumns(table.header, description)) return undefined;
  return {
    description,
    columns: placed(description, collection.descriptions),
    key: keyColumns(description, collection.descriptions),
  };
}

/** The columns of a table's key, in the order in which they sort. */
export function keyColumns(description: TableDescription, descriptions: TableDescriptions | undefined): PlacedColumn[] {
  const columns = placed(description, descriptions);
  return description.key.flatMap((name) => columns.filter(({ column }) => column.name === name));
}

function placed({ columns }: TableDescription, descriptions: TableDescriptions | undefined): PlacedColumn[] {
  return columns.map((column, at) => ({ column, at, among: amongOf(column, descriptions) }));
}

export function sameColumns(header: readonly Cell[], { columns }: TableDescription): boolean {
  return header.length === columns.length && columns.every(({ name }, index) => header[index]?.text === name);
}

function amongOf({ among }: ColumnDescription, descriptions: TableDescriptions | undefined): readonly string[] {
  return typeof among === "string" ? (descriptions?.lists[among] ?? []) : (among ?? []);
}

/** A row's cells as a function from column name to text and place. */
export function cellOf(table: TableFile, row: TableFile["rows"][number], name: string): Cell | undefined {
  const at = table.header.findIndex(({ text }) => text === name);
  return at < 0 ? undefined : row.cells[at];
}

/** The table's name: its file's without folder and ending. */
export function tableName({ path }: TableFile): string {
  return path.slice(path.lastIndexOf("/") + 1).replace(/\.csv$/, "");
}
