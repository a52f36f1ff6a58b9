import { asId } from "./cellWords.ts";
import { readCsv } from "./csvTable.ts";
import type { Placed } from "./place.ts";
import { placedObject, put } from "./placedObject.ts";
import type { Problems } from "./problems.ts";
import { quantityWord } from "./quantityWords.ts";
import { requireColumns } from "./requireColumns.ts";
import type { SourceText } from "./sourceText.ts";

/** Column -> property of a reading. */
const PROPERTY_OF: Readonly<Record<string, string>> = {
  at: "at",
  to: "to",
  quantity: "quantity",
  condition: "condition",
  life: "life",
  value: "value",
  meter: "meter",
  range: "range",
  line_volts: "lineVolts",
  published: "published",
  note: "note",
};
const WORDS = new Set(["condition", "life", "meter"]);

/** Columns that readings.csv may have; at, quantity and value it must have. */
const READINGS_COLUMNS = Object.keys(PROPERTY_OF);

/** The readings of a table, each as an object of the job format with the place of its cells. */
export function readReadingsTable(source: SourceText, problems: Problems): Placed[] {
  const table = readCsv(source, READINGS_COLUMNS, problems);
  if (table === undefined || !requireColumns(table.header, ["at", "quantity", "value"], problems)) return [];
  return table.rows.map((row) => {
    const reading = placedObject(row.span, row.doubtful);
    for (const [column, { text, span }] of row.cells) {
      const value = column === "quantity" ? (quantityWord(text) ?? text) : WORDS.has(column) ? asId(text) : text;
      put(reading, [PROPERTY_OF[column]!], value, span);
    }
    return reading;
  });
}
