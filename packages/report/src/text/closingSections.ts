import { emptyWords } from "../view/emptyWords.ts";
import { readingParts } from "../view/readingParts.ts";
import {
  changeSentence,
  checkTable,
  effectTable,
  expectedTable,
  orderTable,
  readingRemark,
  readingTable,
  sourceTable,
  warningSentence,
} from "../view/tables.ts";
import type { WordTable } from "../view/wordTable.ts";
import { labelled, type TextContext } from "./textFinding.ts";
import { textTable } from "./textTable.ts";
import { hang } from "./wrapText.ts";

function table({ head, rows }: WordTable, empty: string, width: number): string[] {
  if (rows.length === 0) return hang("  ", empty, width);
  return textTable({ head, rows }, width - 2).map((line) => `  ${line}`);
}

/**
 * Rows gathered under their text in the column "what", which is then left out: a terminal has no room for it in every row.
 * `after` gives further lines for the rows of a group.
 */
function grouped({ head, rows }: WordTable, width: number, after: (row: number) => string[] = () => []): string[] {
  const what = head.indexOf("what");
  const others = (row: readonly string[]): string[] => row.filter((_, column) => column !== what);
  const groups = new Map<string, number[]>();
  for (const [index, row] of rows.entries()) {
    const key = row[what] ?? "";
    groups.set(key, [...(groups.get(key) ?? []), index]);
  }
  return [...groups].flatMap(([key, members]) => [
    ...hang("  ", `${key}:`, width),
    ...table({ head: others(head), rows: members.map((index) => others(rows[index] ?? [])) }, "", width),
    ...members.flatMap(after),
  ]);
}

/** Readings by quantity, condition and life, then what else is known of each. */
export function readingLines({ sheet, width }: TextContext): string[] {
  const { readings } = sheet.report;
  if (readings.length === 0) return hang("  ", emptyWords.readings, width);
  return grouped(readingTable(readings), width, (row) => {
    const reading = readings[row];
    const remark = reading ? readingRemark(reading) : "";
    return reading && remark ? hang("  - ", `${readingParts(reading).place}: ${remark}`, width) : [];
  });
}

/** Expected voltages by quantity, condition and life. */
export function expectedLines({ sheet, width }: TextContext): string[] {
  const expected = expectedTable(sheet);
  return expected.rows.length === 0 ? hang("  ", emptyWords.expected, width) : grouped(expected, width);
}

export const sourceLines = ({ sheet, width }: TextContext): string[] => table(sourceTable(sheet), emptyWords.sources, width);

/** What to order, with a box to tick on paper. */
export function orderLines({ sheet, width }: TextContext): string[] {
  const { head, rows } = orderTable(sheet);
  return table({ head: ["", ...head], rows: rows.map((row) => ["[ ]", ...row]) }, emptyWords.order, width);
}

/** Each change and its computed effects. */
export function changeLines({ sheet, width }: TextContext): string[] {
  const { changes } = sheet.report;
  if (changes.length === 0) return hang("  ", emptyWords.changes, width);
  return changes.flatMap((change) => [
    ...hang("  ", changeSentence(change), width),
    ...labelled("why", change.why, width),
    ...table(effectTable(change, sheet), emptyWords.effects, width),
  ]);
}

/** Checks that were made, then those that were not and why. */
export function checkLines({ sheet, width }: TextContext): string[] {
  return [
    "  Made:",
    ...table(checkTable(sheet.checksMade), emptyWords.checksMade, width),
    "  Not made:",
    ...sheet.report.clearance.notMade.flatMap((text) => hang("  - ", text, width)),
    ...table(checkTable(sheet.checksNotMade), emptyWords.checksNotMade, width),
  ];
}

export const remarkLines = ({ sheet, width }: TextContext): string[] =>
  sheet.report.warnings.flatMap((warning) => hang("  - ", warningSentence(warning), width));
