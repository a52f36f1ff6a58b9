import type { ReportReadingLine } from "@underchassis/dataset";
import { emptyWords } from "../view/emptyWords.ts";
import { readingDigits, readingParts } from "../view/readingParts.ts";
import { commonReturn, shortCircumstance, shortWindow } from "../view/shortWords.ts";
import { lifeWord } from "../view/words.ts";
import type { TextContext } from "./textContext.ts";
import { textTable } from "./textTable.ts";
import { hang } from "./wrapText.ts";

/** Contributors to a window that are named; the full report has them all. */
const namedContributors = 2;

const searchHint = "What explains them, and what to measure next: underchassis suspects JOB, or grade --suspects.";

const isOutside = ({ verdict }: ReportReadingLine): boolean => verdict === "outside" || verdict === "far-outside";

function isOffPapers({ measured, publishedLow = -Infinity, publishedHigh = Infinity }: ReportReadingLine): boolean {
  return measured !== null && (measured < publishedLow || measured > publishedHigh);
}

/** How often each life occurs decides which one goes without saying. */
function commonLife(readings: readonly ReportReadingLine[]): string {
  return commonReturn(readings.map(({ life }) => ({ to: life })));
}

/** All readings in one table, then the place and the chief causes of doubt for those outside, then those unlike the papers. */
export function readingLines({ sheet, width }: TextContext): string[] {
  const { readings } = sheet.report;
  if (readings.length === 0) return hang("  ", emptyWords.readings, width);
  const common = commonReturn(readings);
  const life = commonLife(readings);
  const named = (reading: ReportReadingLine): string => (reading.to === common ? reading.at : `${reading.at} to ${reading.to}`);
  const when = (reading: ReportReadingLine): string =>
    [shortCircumstance(reading.condition, reading.quantity), reading.life === life ? "" : lifeWord(reading.life)]
      .filter(Boolean)
      .join(", ");
  const rows = readings.map((reading) => {
    const { measured, computed, window, published, verdict } = readingParts(reading);
    const digits = readingDigits(reading);
    const { low, high, publishedLow, publishedHigh, unit } = reading;
    return [
      named(reading),
      when(reading),
      measured,
      computed,
      shortWindow(low, high, unit, digits) || window,
      shortWindow(publishedLow, publishedHigh, unit, digits) || published,
      verdict,
    ];
  });
  const unlike = readings.filter(isOffPapers).map((reading) => `${named(reading)} ${when(reading)}`);
  const head = ["reading", "condition", "measured", "computed", "window", "published", "verdict"];
  return [
    ...hang("  ", `To ${common} where nothing else is said; ${lifeWord(life)}.`, width),
    ...textTable({ head, rows }, width - 2).map((line) => `  ${line}`),
    ...readings.filter(isOutside).flatMap((reading) => {
      const { location } = readingParts(reading);
      const contributors = (reading.contributors ?? []).slice(0, namedContributors).join(", ");
      const remark = [contributors && `window chiefly from ${contributors}`, location].filter(Boolean).join("; ");
      return remark ? hang("  - ", `${named(reading)}, ${when(reading)}: ${remark}`, width) : [];
    }),
    ...(readings.some(isOutside) && sheet.report.suspects === undefined ? hang("  ", searchHint, width) : []),
    ...(unlike.length > 0 ? hang("  Not as published: ", `${unlike.join("; ")}.`, width) : []),
  ];
}
