import type { Cell } from "./csvRecords.ts";
import { nearestOf } from "./nearest.ts";
import type { Span } from "./place.ts";
import type { Problems } from "./problems.ts";
import { oneOf } from "./words.ts";

export interface CsvHeader {
  /** Column names by index; undefined where the column is not known and is passed over. */
  columns: readonly (string | undefined)[];
  /** Columns up to the last one with a name. */
  width: number;
  span: Span;
}

/** Reads the header row. Case, spaces and hyphens in its names do not matter. */
export function readHeader(cells: readonly Cell[], known: readonly string[], problems: Problems): CsvHeader | undefined {
  const first = cells[0]!;
  const separator = cells.length === 1 ? wrongSeparator(first.text) : undefined;
  if (separator !== undefined) {
    problems.add(first.span, {
      code: "csv-separator",
      message: `the table is separated by ${separator}`,
      expected: "commas between the cells",
      help: "save it as CSV with commas; spreadsheets ask for the separator when saving",
    });
    return undefined;
  }
  let width = cells.length;
  while (width > 0 && cells[width - 1]!.text === "") width--;
  if (width > 1 && !cells.some(({ text }) => nameOf(text) !== "" && isNear(nameOf(text), known))) {
    problems.add(first.span, {
      code: "csv-header-missing",
      message: "the first row names no column",
      received: first.text,
      expected: `a row of column names first: ${oneOf(known, known.length)}`,
      help: "put a row of names above the first row of values; the table was not read",
    });
    return undefined;
  }
  const columns: (string | undefined)[] = [];
  for (const { text, span } of cells.slice(0, width)) {
    const name = nameOf(text);
    if (text === "") {
      problems.add(span, { code: "csv-column-unnamed", message: "a column without a name", expected: oneOf(known, known.length) });
    } else if (!known.includes(name)) {
      problems.add(span, {
        code: "csv-column-unknown",
        message: `the column "${text}" is not known`,
        received: text,
        expected: oneOf(known, known.length),
        nearest: () => nearestOf(name, known),
      });
    } else if (columns.includes(name)) {
      problems.add(span, {
        code: "csv-column-duplicate",
        message: `the column "${name}" stands twice`,
        received: text,
        help: "keep one of the two",
      });
    } else {
      columns.push(name);
      continue;
    }
    columns.push(undefined);
  }
  return { columns, width, span: first.span };
}

function nameOf(text: string): string {
  return text.toLowerCase().replace(/[\s-]+/g, "_");
}

/** Whether it is a column's name, be it misspelt. */
function isNear(name: string, known: readonly string[]): boolean {
  return known.includes(name) || nearestOf(name, known) !== undefined;
}

function wrongSeparator(text: string): string | undefined {
  if (text.includes(";")) return "semicolons";
  if (text.includes("\t")) return "tabs";
  return text.includes("|") ? "bars" : undefined;
}
