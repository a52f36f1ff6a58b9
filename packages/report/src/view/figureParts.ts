import { formatQuantity } from "@underchassis/calc";
import type { ReportFigure } from "@underchassis/dataset";
import { digitsToTell, formatShare, formatValue } from "./formatValue.ts";

/** A figure in words, each part ready to be set; "" where the figure has no such part. */
export interface FigureParts {
  label: string;
  value: string;
  /** "270 V to 300 V", "at least 270 V". */
  window: string;
  /** "at most 350 V". */
  limit: string;
  /** "19 % in hand", "over by 12 %". */
  margin: string;
  how: string;
  /** Source id. */
  source: string;
}

/** "270 V to 300 V", "at least 270 V", "at most 300 V"; "" without bounds. Bounds in the base unit `unit`. */
export function windowText(low: number | null | undefined, high: number | null | undefined, unit: string, digits?: number): string {
  const places = digits ?? digitsToTell([low, high], unit);
  const has = (bound: number | null | undefined): bound is number => typeof bound === "number" && Number.isFinite(bound);
  if (has(low) && has(high))
    return low === high ? formatValue(low, unit, places) : `${formatValue(low, unit, places)} to ${formatValue(high, unit, places)}`;
  if (has(low)) return `at least ${formatValue(low, unit, places)}`;
  return has(high) ? `at most ${formatValue(high, unit, places)}` : "";
}

/** From this many times the limit on, a multiple is read more easily than a percentage. */
const manyTimes = 10;

/** Rounding of the computation, not a margin. */
const smallestMargin = 1e-6;

function marginText(margin: number, kind: ReportFigure["limitKind"]): string {
  const times = kind === "minimum" ? 1 + margin : 1 - margin;
  if (times >= manyTimes) return `${formatQuantity(times, "ratio", 3)} times the limit`;
  if (Math.abs(margin) < smallestMargin) return "just at the limit";
  if (margin >= 0) return `${formatShare(margin)} in hand`;
  return `${kind === "minimum" ? "short" : "over"} by ${formatShare(-margin)}`;
}

/** Words for one figure behind a finding: value, window, limit and margin with units. */
export function figureParts(figure: ReportFigure): FigureParts {
  const digits = digitsToTell([figure.value, figure.low, figure.high, figure.limit], figure.unit);
  const bound = figure.limitKind === "minimum" ? "at least" : figure.limitKind === "maximum" ? "at most" : "limit";
  return {
    label: figure.label,
    value: formatValue(figure.value, figure.unit, digits),
    window: windowText(figure.low, figure.high, figure.unit, digits),
    limit: figure.limit === undefined ? "" : `${bound} ${formatValue(figure.limit, figure.unit, digits)}`,
    margin: figure.margin === undefined ? "" : marginText(figure.margin, figure.limitKind),
    how: figure.how,
    source: figure.source,
  };
}

/** The figure as one line for text and Markdown, without label, method and source. */
export function figureSentence(parts: FigureParts): string {
  const limit = [parts.limit, parts.margin].filter(Boolean).join(", ");
  return [parts.value, parts.window && `window ${parts.window}`, limit].filter(Boolean).join("; ");
}
