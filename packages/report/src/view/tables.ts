import type { Report, ReportPartLine } from "@underchassis/dataset";
import { windowText } from "./figureParts.ts";
import { digitsToTell, formatValue } from "./formatValue.ts";
import { partParts } from "./partParts.ts";
import { readingParts } from "./readingParts.ts";
import type { Sheet } from "./sheet.ts";
import { kindWord } from "./sourceNames.ts";
import { changeWords, lifeWord, outcomeWords, quantityUnit, quantityWord } from "./words.ts";
import type { WordTable } from "./wordTable.ts";

/** Readings against computed windows and published ranges. */
export function readingTable(readings: Report["readings"]): WordTable {
  return {
    head: ["reading", "what", "measured", "computed", "window", "published", "off", "verdict"],
    rows: readings
      .map(readingParts)
      .map((parts) => [
        parts.place,
        parts.circumstance,
        parts.measured,
        parts.computed,
        parts.window,
        parts.published,
        parts.off,
        parts.verdict,
      ]),
  };
}

/** What else is known of a reading: where its window chiefly comes from, meter, remark, place in the files; "" if nothing. */
export function readingRemark(reading: Report["readings"][number]): string {
  const { contributors, meter, note, location } = readingParts(reading);
  return [contributors && `window chiefly from ${contributors}`, meter && `meter: ${meter}`, note, location && `written at ${location}`]
    .filter(Boolean)
    .join("; ");
}

/** What the chassis as it stands should read, whether or not it was measured. */
export function expectedTable({ report }: Sheet): WordTable {
  const titles = new Map(report.stages.map((stage) => [stage.id, stage.title]));
  return {
    head: ["point", "what", "expected", "window", "ripple", "measured", "stage"],
    rows: report.expected.map((line) => {
      const unit = quantityUnit(line.quantity);
      const digits = digitsToTell([line.low, line.high, line.measured], unit);
      return [
        `${line.point} to ${line.to}`,
        `${quantityWord(line.quantity)}, ${line.condition}, ${lifeWord(line.life)}`,
        formatValue(line.nominal, unit, digits),
        windowText(line.low, line.high, unit, digits),
        line.ripple === undefined ? "" : formatValue(line.ripple, unit),
        line.measured === undefined ? "" : formatValue(line.measured, unit, digits),
        line.stage === undefined ? "" : (titles.get(line.stage) ?? line.stage),
      ];
    }),
  };
}

/** Parts of a stage with their three lives, load and verdict. */
export function partTable(parts: readonly ReportPartLine[]): WordTable {
  return {
    head: ["part", "what", "between", "marked", "measured", "fitted", "load", "verdict"],
    rows: parts
      .map(partParts)
      .map((part) => [part.name, part.title, part.between, part.marked, part.measured, part.fitted, part.load, part.verdict]),
  };
}

/** Computed effects of one change. */
export function effectTable(change: Report["changes"][number], sheet: Sheet): WordTable {
  return {
    head: ["figure", "condition", "before", "after", "limit", "limit from"],
    rows: change.effects.map(({ label, unit, condition, before, after, limit, limitSource }) => {
      const digits = digitsToTell([before, after, limit], unit);
      const value = (number: number | null): string => formatValue(number, unit, digits);
      return [
        label,
        condition,
        value(before),
        value(after),
        limit === undefined ? "" : value(limit),
        limitSource === undefined ? "" : sheet.source(limitSource).text,
      ];
    }),
  };
}

/** One line over a change: what was done, or will be, to which part. */
export function changeSentence({ part, title, what, from, to, planned }: Report["changes"][number]): string {
  const steps = from && to ? `${from} -> ${to}` : from || to;
  const done = planned ? `to be ${changeWords[what]} (planned)` : changeWords[what];
  return `${part}, ${title}, ${done}${steps ? `: ${steps}` : ""}`;
}

/** Parts to order, one line a kind. */
export function orderTable({ report }: Sheet): WordTable {
  return {
    head: ["quantity", "what", "for", "why"],
    rows: report.order.map((item) => [String(item.quantity), item.what, item.for.join(", "), item.why.join("; ")]),
  };
}

/** Checks with their outcomes. */
export function checkTable(checks: Report["checks"]): WordTable {
  return {
    head: ["check", "area", "outcome", "findings", "remark"],
    rows: checks.map((check) => [check.title, check.area, outcomeWords[check.outcome], String(check.findings), check.note ?? ""]),
  };
}

/** Sources with their kind in words. */
export function sourceTable({ report }: Sheet): WordTable {
  return { head: ["source", "kind", "title"], rows: report.sources.map((source) => [source.id, kindWord(source.kind), source.title]) };
}

/** "readings.csv:7:3: message"; only what the warning has. */
export function warningSentence({ message, file, line, column }: Report["warnings"][number]): string {
  const place = [file, line, column].filter((part) => part !== undefined).join(":");
  return place ? `${place}: ${message}` : message;
}
