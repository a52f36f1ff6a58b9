/** @jsxRuntime automatic @jsxImportSource preact */
import type { ReportReadingLine } from "@underchassis/dataset";
import { digitsToTell, formatValue } from "../view/formatValue.ts";
import { readingParts } from "../view/readingParts.ts";
import { readingScale } from "../view/readingScale.ts";

const width = 236;
const margin = 14;
const axis = 27;

/** Shape of the measured value: it tells the verdict without colour. */
function markPath(at: number, reading: ReportReadingLine, off: "no" | "below" | "above"): string {
  if (off === "above") return `M${at - 7} 4 L${at + 3} 10 L${at - 7} 16 Z`;
  if (off === "below") return `M${at + 7} 4 L${at - 3} 10 L${at + 7} 16 Z`;
  if (reading.verdict === "within") return `M${at} 3 L${at + 5} 10 L${at} 17 L${at - 5} 10 Z`;
  return `M${at - 5} 4 L${at + 5} 16 M${at + 5} 4 L${at - 5} 16`;
}

/**
 * One reading on its own axis: window as a bar in the middle third, published range as a thin bar under it, computed value
 * as a line, measured value as a mark. Nothing for a reading that was not computed. The row's cells say the same in words.
 */
export function ReadingChart({ reading }: { reading: ReportReadingLine }) {
  const scale = readingScale(reading, width);
  if (!scale) return <span>no window to draw</span>;
  const { window, published, nominal, measured, ticks } = scale;
  const parts = readingParts(reading);
  const digits = digitsToTell(
    ticks.map((tick) => tick.value),
    reading.unit,
  );
  const label = `measured ${parts.measured}, window ${parts.window}, ${parts.verdict}`;
  const isLine = measured.off === "no" && reading.verdict !== "within";
  return (
    <svg viewBox={`${-margin} 0 ${width + 2 * margin} 42`} role="img" aria-label={label} class="chart">
      <rect class="window" x={window.from} y="5" width={Math.max(1, window.to - window.from)} height="10" />
      {published && <rect class="published" x={published.from} y="18.5" width={Math.max(1, published.to - published.from)} height="4" />}
      <path class="axis" d={`M0 ${axis} H${width} ${ticks.map((tick) => `M${tick.at} ${axis} v3`).join(" ")}`} />
      {nominal !== undefined && <path class="nominal" d={`M${nominal} 3 V17`} />}
      <path class={isLine ? "measured line" : "measured"} d={markPath(measured.at, reading, measured.off)} />
      {ticks.map((tick) => (
        <text x={tick.at} y="40" key={tick.value}>
          {formatValue(tick.value, reading.unit, digits)}
        </text>
      ))}
    </svg>
  );
}
