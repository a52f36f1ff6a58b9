import { type CsvHeader, readHeader } from "./csvHeader.ts";
import { type Cell, csvRecords } from "./csvRecords.ts";
import type { Span } from "./place.ts";
import type { Problems } from "./problems.ts";
import type { ReadLimits } from "./readLimits.ts";
import type { SourceText } from "./sourceText.ts";

export interface Row {
  cells: ReadonlyMap<string, Cell>;
  /** The row's first cell, blank or not. */
  span: Span;
  /** True when cells of it were passed over, their column being unknown. */
  doubtful: boolean;
}

export interface CsvTable {
  header: CsvHeader;
  rows: Row[];
  /** Texts of cells that could not be used: what they name exists, though this reading does not show it. */
  lost: string[];
}

/**
 * Reads a table with a header row. Blank rows are passed over; every row that is not as wide as the header is reported.
 *
 * @param columns - names that a column may have
 * @returns undefined when the header or the quoting leaves nothing to read
 */
export function readCsv(source: SourceText, columns: readonly string[], limits: ReadLimits, problems: Problems): CsvTable | undefined {
  const records = csvRecords(source, limits, problems);
  const first = records?.find(({ cells }) => cells.some(({ text }) => text !== ""));
  if (records === undefined || first === undefined) return undefined;
  const header = readHeader(first.cells, columns, problems);
  if (header === undefined) return undefined;
  const table: CsvTable = { header, rows: [], lost: [] };
  for (const { cells } of records.slice(records.indexOf(first) + 1)) {
    if (cells.every(({ text }) => text === "")) continue;
    if (!fitsHeader(cells, header, problems)) table.lost.push(...cells.map(({ text }) => text));
    else if (table.rows.length === limits.rows) {
      problems.add(cells[0]!.span, {
        code: "csv-too-long",
        message: `more rows than a ${limits.noun} may have`,
        expected: `at most ${limits.rows}`,
      });
      break;
    } else {
      const unplaced = cells.filter(({ text }, index) => text !== "" && header.columns[index] === undefined);
      table.rows.push({ cells: cellsByColumn(cells, header), span: cells[0]!.span, doubtful: unplaced.length > 0 });
      table.lost.push(...unplaced.map(({ text }) => text));
    }
  }
  return table;
}

function cellsByColumn(cells: readonly Cell[], header: CsvHeader): Map<string, Cell> {
  const named = new Map<string, Cell>();
  for (const [index, cell] of cells.entries()) {
    const column = header.columns[index];
    if (column !== undefined && cell.text !== "") named.set(column, cell);
  }
  return named;
}

function fitsHeader(cells: readonly Cell[], header: CsvHeader, problems: Problems): boolean {
  const surplus = cells.slice(header.width).find(({ text }) => text !== "");
  if (surplus === undefined && cells.length >= header.width) return true;
  problems.add(surplus?.span ?? cells[0]!.span, {
    code: "csv-ragged",
    message: surplus === undefined ? "a row with too few cells" : "a row with too many cells",
    received: `${cells.length} cell${cells.length === 1 ? "" : "s"}`,
    expected: `${header.width}, as in the header`,
    help: "a cell that holds a comma stands in quotes",
  });
  return false;
}
