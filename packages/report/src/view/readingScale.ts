import type { ReportReadingLine } from "@underchassis/dataset";
import { type ScaleLinear, scaleLinear } from "d3-scale";

/** Where everything of one reading lies on its own axis, in units of `width`; absent what the reading has not. */
export interface ReadingScale {
  window: { from: number; to: number; openLow: boolean; openHigh: boolean };
  nominal?: number;
  published?: { from: number; to: number };
  /** `off` says that the mark stands at the edge because the value lies beyond the axis. */
  measured: { at: number; off: "no" | "below" | "above" };
  ticks: readonly { at: number; value: number }[];
}

const finite = (value: number | null | undefined): value is number => typeof value === "number" && Number.isFinite(value);

/** Low and high end of the axis: the window in the middle third, so that all windows stand one above the other. */
function domainOf(reading: ReportReadingLine): [number, number] | undefined {
  const { low, high, nominal } = reading;
  if (finite(low) && finite(high)) {
    const size = high - low || Math.abs(finite(nominal) ? nominal : low) * 0.1 || 1;
    return [low - size, high + size];
  }
  const bound = finite(high) ? high : low;
  if (!finite(bound)) return undefined;
  // One bound only: the axis begins at zero where it can, and leaves room on the other side of the bound.
  const room = Math.abs(bound) || 1;
  if (bound > 0) return finite(high) ? [0, 1.5 * bound] : [0, 3 * bound];
  return [bound - 2 * room, bound + room];
}

/** More labels than this run into each other on a narrow chart. */
const mostTicks = 4;

/** Round values along the axis, as many as their labels leave room for. */
function fewTicks(scale: ScaleLinear<number, number>): number[] {
  const ticks = [mostTicks, 3, 2].map((count) => scale.ticks(count));
  return ticks.find(({ length }) => length <= mostTicks) ?? scale.ticks(1);
}

/**
 * Lays one reading out on an axis of its own, 0 to `width`; undefined when the reading was not computed or its window has
 * no finite bound. An open (infinite) resistance lies above the axis.
 */
export function readingScale(reading: ReportReadingLine, width: number): ReadingScale | undefined {
  const domain = reading.verdict === "not-computed" ? undefined : domainOf(reading);
  if (!domain) return undefined;
  const scale = scaleLinear().domain(domain).range([0, width]);
  const place = (value: number): number => Math.min(width, Math.max(0, scale(value)));
  const { low, high, nominal, publishedLow, publishedHigh, measured } = reading;
  const value = measured ?? Number.POSITIVE_INFINITY;
  const hasPublished = finite(publishedLow) || finite(publishedHigh);
  return {
    window: { from: finite(low) ? place(low) : 0, to: finite(high) ? place(high) : width, openLow: !finite(low), openHigh: !finite(high) },
    ...(finite(nominal) ? { nominal: place(nominal) } : {}),
    ...(hasPublished
      ? { published: { from: finite(publishedLow) ? place(publishedLow) : 0, to: finite(publishedHigh) ? place(publishedHigh) : width } }
      : {}),
    measured: {
      at: value > domain[1] ? width : value < domain[0] ? 0 : place(value),
      off: value > domain[1] ? "above" : value < domain[0] ? "below" : "no",
    },
    ticks: fewTicks(scale).map((tick) => ({ at: scale(tick), value: tick })),
  };
}
