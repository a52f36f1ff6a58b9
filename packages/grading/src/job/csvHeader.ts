import type { Cell } from "./csvTable.ts";
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
  const columns: (string | undefined)[] = [];
  for (const { text, span } of cells.slice(0, width)) {
    const name = text.toLowerCase().replace(/[\s-]+/g, "_");
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

function wrongSeparator(text: string): string | undefined {
  if (text.includes(";")) return "semicolons";
  if (text.includes("\t")) return "tabs";
  return text.includes("|") ? "bars" : undefined;
}
