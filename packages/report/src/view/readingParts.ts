import type { ReportReadingLine } from "@underchassis/dataset";
import { windowText } from "./figureParts.ts";
import { digitsToTell, formatShare, formatValue } from "./formatValue.ts";
import { lifeWord, quantityWord, verdictWords } from "./words.ts";

/** A reading in words. */
export interface ReadingParts {
  /** "V1 plate to chassis". */
  place: string;
  /** "DC voltage, operating, as found". */
  circumstance: string;
  measured: string;
  /** Computed value; "not computed". */
  computed: string;
  window: string;
  published: string;
  verdict: string;
  /** Measured less computed: "-5.4 V, 2.1 %"; "" when it cannot be said. */
  off: string;
  contributors: string;
  meter: string;
  note: string;
  /** "readings.csv:4:1"; "" when the reading has no place of its own. */
  location: string;
}

/**
 * Significant digits for the values of one reading: enough to tell the measured value from every bound that it is judged by.
 * How close it lies to the computed value does not matter, or a perfect match would be printed with six digits.
 */
export function readingDigits({ measured, low, high, publishedLow, publishedHigh, unit }: ReportReadingLine): number {
  return Math.max(digitsToTell([measured, low, high], unit), digitsToTell([measured, publishedLow, publishedHigh], unit));
}

/** Measured less computed, with the share where the computed value is not zero: "-5.4 V, 2.1 %"; "none" below what is printed. */
function offText(reading: ReportReadingLine, digits: number): string {
  const { measured, nominal, unit } = reading;
  if (typeof measured !== "number" || typeof nominal !== "number" || reading.verdict === "not-computed") return "";
  if (formatValue(measured, unit, digits) === formatValue(nominal, unit, digits)) return "none";
  const difference = measured - nominal;
  const sign = difference > 0 ? "+" : "";
  const share = nominal === 0 ? "" : `, ${formatShare(Math.abs(difference / nominal))}`;
  return `${sign}${formatValue(difference, unit, 2)}${share}`;
}

/** Words for one reading, values in the reading's own unit; an infinite resistance is "open". */
export function readingParts(reading: ReportReadingLine): ReadingParts {
  const { unit, low, high, nominal } = reading;
  const digits = readingDigits(reading);
  const isComputed = reading.verdict !== "not-computed";
  const none = unit === "ohm" ? "open" : "no bound";
  const window = windowText(low, high, unit, digits) || (isComputed ? none : "");
  const center = nominal === undefined || !isComputed ? "" : formatValue(nominal, unit, digits, none);
  const place = reading.location;
  return {
    place: `${reading.at} to ${reading.to}`,
    circumstance: `${quantityWord(reading.quantity)}, ${reading.condition}, ${lifeWord(reading.life)}`,
    measured: formatValue(reading.measured, unit, digits, none),
    computed: isComputed ? center : "not computed",
    window,
    published: windowText(reading.publishedLow, reading.publishedHigh, unit, digits),
    verdict: verdictWords[reading.verdict],
    off: offText(reading, digits),
    contributors: (reading.contributors ?? []).join(", "),
    meter: reading.meter ?? "",
    note: reading.note ?? "",
    location: place ? `${place.file}:${place.line}:${place.column}` : "",
  };
}
