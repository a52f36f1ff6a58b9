import type { TableRow } from "@underchassis/dataset";
import type { ChassisModel } from "../../model/index.ts";

/** Rows of a reference table; none when the dataset has no such table. */
export function rowsOf(model: ChassisModel, table: string): readonly TableRow[] {
  return model.dataset.tables.get(table) ?? [];
}

/** A column of a row as a number; undefined when it is empty or no number. */
export function numberIn(row: TableRow, column: string): number | undefined {
  const text = row[column];
  if (text === undefined || text === "") return undefined;
  const value = Number(text);
  return Number.isFinite(value) ? value : undefined;
}
