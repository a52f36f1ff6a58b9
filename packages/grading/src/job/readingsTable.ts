import { type Placed, type Problems, placedObject, put, readCsv, requireColumns, type SourceText } from "@underchassis/source-text";
import { asId } from "./cellWords.ts";
import { JOB_LIMITS } from "./jobLimits.ts";
import { quantityWord } from "./quantityWords.ts";

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

/** The readings of a table, each as an object of the job format with the place of its cells. A row whose value is blank is one that is still to be taken. */
export function readReadingsTable(source: SourceText, problems: Problems): Placed[] {
  const table = readCsv(source, READINGS_COLUMNS, JOB_LIMITS, problems);
  if (table === undefined || !requireColumns(table.header, ["at", "quantity", "value"], problems)) return [];
  const [taken, blank] = [table.rows.filter(({ cells }) => cells.has("value")), table.rows.filter((row) => !row.cells.has("value"))];
  const first = blank[0];
  if (first !== undefined)
    problems.add(first.span, {
      code: "reading-blank",
      severity: "warning",
      message:
        blank.length === 1
          ? "a reading without a value; it counts as not taken"
          : `${blank.length} readings without a value, this the first; they count as not taken`,
      expected: "what the meter showed, or no such row",
    });
  return taken.map((row) => {
    const reading = placedObject(row.span, row.doubtful);
    for (const [column, { text, span }] of row.cells) {
      const value = column === "quantity" ? (quantityWord(text) ?? text) : WORDS.has(column) ? asId(text) : text;
      put(reading, [PROPERTY_OF[column]!], value, span);
    }
    return reading;
  });
}
