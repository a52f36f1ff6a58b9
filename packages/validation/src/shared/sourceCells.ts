import type { TableDescriptions } from "@underchassis/dataset";
import type { Cell } from "@underchassis/source-text";
import type { TableFile } from "../model/subjects.ts";

/** Cells of a table that hold the id of a source: columns that its description calls so, else those named `source`. */
export function sourceCells(table: TableFile, descriptions: TableDescriptions | undefined): Cell[] {
  const described = descriptions?.tables.find(({ file }) => table.path === `datasets/tables/${file}`);
  const columns = described?.columns.filter(({ type }) => type === "source").map(({ name }) => name) ?? ["source"];
  const places = table.header.flatMap(({ text }, index) => (columns.includes(text) ? [index] : []));
  return table.rows.flatMap(({ cells }) =>
    places.flatMap((place) => {
      const cell = cells[place];
      return cell === undefined || cell.text === "" ? [] : [cell];
    }),
  );
}
