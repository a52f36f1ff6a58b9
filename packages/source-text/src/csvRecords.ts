import { type Options, parse } from "csv-parse/sync";
import { byteCounter } from "./byteCounter.ts";
import { cellSpans } from "./cellSpans.ts";
import { reportCsvFault } from "./csvFault.ts";
import { withinCsvLimits } from "./csvLimits.ts";
import type { Span } from "./place.ts";
import type { Problems } from "./problems.ts";
import type { ReadLimits } from "./readLimits.ts";
import type { SourceText } from "./sourceText.ts";

/** A cell without the spaces around it, and where it stands. */
export interface Cell {
  text: string;
  span: Span;
}

interface ParsedRecord {
  record: string[];
  info: { bytes: number };
}

const OPTIONS: Options = {
  info: true,
  relax_column_count: true,
  skip_empty_lines: false,
  trim: true,
  record_delimiter: ["\r\n", "\n", "\r"],
  max_record_size: 1_000_000,
};

/** One record of a CSV file; `end` is the offset behind it, its line end included. */
export interface CsvRecord {
  cells: Cell[];
  start: number;
  end: number;
}

/**
 * Splits a file into records, the library doing the quoting and the byte counts giving the places. Blank lines are records of one empty cell.
 *
 * @returns undefined (and a diagnostic) when the file holds too much or its quoting cannot be followed
 */
export function csvRecords(source: SourceText, limits: ReadLimits, problems: Problems): CsvRecord[] | undefined {
  const { text } = source;
  if (!withinCsvLimits(source, limits, problems)) return undefined;
  let parsed: ParsedRecord[];
  try {
    parsed = parse(text, OPTIONS) as never;
  } catch (error) {
    reportCsvFault(source, error, endOfRecords(text, (error as { records?: number }).records ?? 0), problems);
    return undefined;
  }
  const records: CsvRecord[] = [];
  const offsetOf = byteCounter(text);
  let start = 0;
  for (const { record, info } of parsed) {
    const end = offsetOf(info.bytes);
    const spans = cellSpans(text, start, end);
    const whole = { offset: start, length: 1 };
    records.push({
      start,
      end,
      cells: record.map((value, index) => ({ text: value.trim(), span: { source, ...(spans[index] ?? whole) } })),
    });
    start = end;
  }
  return records;
}

/** Offset behind the first records of a text. The library's own count of bytes in an error adds records up more than once. */
function endOfRecords(text: string, count: number): number {
  if (count === 0) return 0;
  const whole = parse(text, { ...OPTIONS, to: count }) as never as ParsedRecord[];
  return byteCounter(text)(whole.at(-1)?.info.bytes ?? 0);
}
