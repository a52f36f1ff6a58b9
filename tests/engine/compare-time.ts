/** Holds switch-on courses and small-signal gains of the engine against stored records. */
import type { SmallSignalResponse, TransientResult } from "@underchassis/calc";
import { Comparison } from "./compare.ts";
import type { SmallSignalAnalysis, Tolerance, TransientAnalysis } from "./oracle/case.ts";
import type { OracleRecord } from "./oracle/record.ts";
import { valueAt } from "./oracle/trace-figures.ts";

/** A wave that is still steep is compared within this share of its largest value: the two grids of instants differ. */
const STEEP = 0.005;
/** Share of an element's larger extreme from which the other counts as a peak. */
const LEAST_PEAK = 0.1;
/** What flows in a branch that hardly carries anything, in amperes and in ampere-squared seconds. */
const LEAST_AMPS = 1e-6;
const LEAST_I2T = 1e-10;

/** Points at the sample instants; peaks and I^2 t of the elements (the latter within twice the share of a peak). */
export function compareTransient(
  analysis: TransientAnalysis,
  record: OracleRecord,
  found: TransientResult,
  tolerance: Tolerance,
): Comparison {
  const comparison = new Comparison();
  for (const [point, expected] of Object.entries(record.samples ?? {})) {
    const volts = found.volts.get(point) ?? new Float64Array(found.times.length).fill(Number.NaN);
    const figures = record.points?.[point];
    const size = figures === undefined ? Number.NaN : Math.max(Math.abs(figures.max), Math.abs(figures.min));
    analysis.sampleSeconds.forEach((seconds, k) => {
      const reference = expected[k] ?? Number.NaN;
      const allowed = tolerance.mean * Math.abs(reference) + STEEP * size + 1e-4;
      comparison.add(`${point} at ${seconds} s`, valueAt(found.times, volts, seconds), reference, allowed);
    });
  }
  for (const [id, expected] of Object.entries(record.elements ?? {})) {
    const figures = found.elements.get(id);
    const { max, min } = expected.amps;
    const allowed = (value: number): number => tolerance.peak * Math.abs(value) + STEEP * (max - min) + LEAST_AMPS;
    // An extreme under a tenth of the other is no peak but where the record happens to begin (the engine's at the end of a step).
    const least = LEAST_PEAK * Math.max(Math.abs(max), Math.abs(min));
    if (Math.abs(max) >= least) comparison.add(`${id} max amps`, figures?.maxAmps ?? Number.NaN, max, allowed(max));
    if (Math.abs(min) >= least) comparison.add(`${id} min amps`, figures?.minAmps ?? Number.NaN, min, allowed(min));
    const square = record.ampsSquaredSeconds?.[id] ?? Number.NaN;
    comparison.add(`${id} ampere-squared seconds`, figures?.i2t ?? Number.NaN, square, 2 * tolerance.peak * square + LEAST_I2T);
  }
  return comparison;
}

/** Gains as complex numbers: the distance between the two within half a percent of their size. */
export function compareGains(
  analysis: SmallSignalAnalysis,
  record: OracleRecord,
  found: ReadonlyMap<string, SmallSignalResponse>,
): Comparison {
  const comparison = new Comparison();
  for (const [point, expected] of Object.entries(record.gains ?? {})) {
    expected.forEach(([re, im], k) => {
      const gain = found.get(point)?.gain[k];
      const distance = gain === undefined ? Number.NaN : Math.hypot(gain.re - re, gain.im - im);
      comparison.add(`${point} at ${analysis.hertz[k]} Hz`, distance, 0, 0.005 * Math.hypot(re, im));
    });
  }
  return comparison;
}
