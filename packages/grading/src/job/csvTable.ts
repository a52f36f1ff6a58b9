import { parse } from "csv-parse/sync";
import { byteCounter } from "./byteCounter.ts";
import { cellSpans } from "./cellSpans.ts";
import { reportCsvFault } from "./csvFault.ts";
import { type CsvHeader, readHeader } from "./csvHeader.ts";
import { withinCsvLimits } from "./csvLimits.ts";
import type { Span } from "./place.ts";
import type { Problems } from "./problems.ts";
import type { SourceText } from "./sourceText.ts";

/** Most rows that are read from one table; the job format takes no more parts or readings than that. */
const ROW_LIMIT = 2000;

/** A cell that is not blank, without the spaces around it. */
export interface Cell {
  text: string;
  span: Span;
}

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
export function readCsv(source: SourceText, columns: readonly string[], problems: Problems): CsvTable | undefined {
  const records = splitRecords(source, problems);
  const first = records?.find(({ cells }) => cells.some(({ text }) => text !== ""));
  if (records === undefined || first === undefined) return undefined;
  const header = readHeader(first.cells, columns, problems);
  if (header === undefined) return undefined;
  const table: CsvTable = { header, rows: [], lost: [] };
  for (const { cells } of records.slice(records.indexOf(first) + 1)) {
    if (cells.every(({ text }) => text === "")) continue;
    if (!fitsHeader(cells, header, problems)) table.lost.push(...cells.map(({ text }) => text));
    else if (table.rows.length === ROW_LIMIT) {
      problems.add(cells[0]!.span, { code: "csv-too-long", message: "more rows than a job may have", expected: `at most ${ROW_LIMIT}` });
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

/** Splits the file into records, the library doing the quoting and the byte counts giving the places. */
function splitRecords(source: SourceText, problems: Problems): { cells: Cell[] }[] | undefined {
  const { text } = source;
  if (!withinCsvLimits(source, problems)) return undefined;
  let parsed: { record: string[]; info: { bytes: number } }[];
  try {
    parsed = parse(text, {
      info: true,
      relax_column_count: true,
      skip_empty_lines: false,
      trim: true,
      record_delimiter: ["\r\n", "\n", "\r"],
      max_record_size: 1_000_000,
    }) as never;
  } catch (error) {
    reportCsvFault(source, error, problems);
    return undefined;
  }
  const records: { cells: Cell[] }[] = [];
  const offsetOf = byteCounter(text);
  let start = 0;
  for (const { record, info } of parsed) {
    const end = offsetOf(info.bytes);
    const spans = cellSpans(text, start, end);
    const whole = { offset: start, length: 1 };
    records.push({ cells: record.map((value, index) => ({ text: value.trim(), span: { source, ...(spans[index] ?? whole) } })) });
    start = end;
  }
  return records;
}
