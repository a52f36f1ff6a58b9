import { cellSpans } from "./cellSpans.ts";
import type { Problems } from "./problems.ts";
import type { SourceText } from "./sourceText.ts";

/** What the CSV library's error says about where it stopped. */
interface CsvError {
  code?: string;
  message?: string;
  /** Index of the cell within its record. */
  index?: number;
}

/** Reports the quoting fault at which the CSV library gave up; what follows it in that file is not read. @param start offset of the record with the fault */
export function reportCsvFault(source: SourceText, error: unknown, start: number, problems: Problems): void {
  const { code = "", index = 0 } = error as CsvError;
  const { text } = source;
  const cell = cellSpans(text, start, text.length)[index] ?? { offset: start, length: 1 };
  const rest = "the rows from here on were not read";
  if (code === "CSV_QUOTE_NOT_CLOSED") {
    problems.add(
      { source, offset: cell.offset, length: 1 },
      {
        code: "quote-missing",
        message: "a quote mark is opened and never closed",
        received: text.slice(cell.offset, cell.offset + 30).split(/[\r\n]/)[0]!,
        expected: 'a " at the end of the cell',
        help: rest,
      },
    );
  } else if (
    code === "INVALID_OPENING_QUOTE" ||
    code === "CSV_INVALID_CLOSING_QUOTE" ||
    code === "CSV_NON_TRIMABLE_CHAR_AFTER_CLOSING_QUOTE"
  ) {
    const quote = strayQuote(text, cell.offset, code === "INVALID_OPENING_QUOTE");
    problems.add(
      { source, offset: quote, length: 1 },
      {
        code: "csv-quote",
        message: "a quote mark inside a cell",
        expected: 'the whole cell in quotes, and each quote mark within it twice: "1/4"" fuse"',
        help: rest,
      },
    );
  } else {
    problems.add(
      { source, offset: cell.offset, length: 1 },
      { code: "csv-unreadable", message: "the table cannot be read from here on", expected: "comma-separated values with a header row" },
    );
  }
}

/** The first quote mark in a bare cell, or the one that closes a quoted cell too early. */
function strayQuote(text: string, offset: number, bare: boolean): number {
  let at = text.indexOf('"', bare ? offset : offset + 1);
  while (!bare && at >= 0 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  return at < 0 ? offset : at;
}
