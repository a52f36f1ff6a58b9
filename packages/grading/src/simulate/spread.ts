import type { CompiledNetwork } from "../model/index.ts";

export interface Spread {
  /** Standard deviation in the probe's unit. */
  sigma: number;
  /** Shift of the mean caused by one-sided tolerances (-10 +50 %). */
  shift: number;
  worstDown: number;
  worstUp: number;
  contributors: { part: string; parameter: string; share: number }[];
}

/** No part is taken to be weaker than a twentieth of its value. */
const MOST_BELOW = 0.95;

/**
 * How far a probe may be off when each value lies anywhere within its tolerance, independently: a value with half-width t has
 * the standard deviation t / sqrt(3) of a uniform distribution. Worst case: every value at the end that hurts.
 *
 * @param uncertain values with their tolerances, as shares of the value
 * @param slopes d(probe) / d(ln value), in the same order, in the probe's unit
 */
export function spreadOf(uncertain: CompiledNetwork["uncertain"], slopes: ArrayLike<number>): Spread {
  let variance = 0;
  let shift = 0;
  let worstDown = 0;
  let worstUp = 0;
  const shares: { part: string; parameter: string; share: number }[] = [];
  for (const [index, { minus, plus, part, ref }] of uncertain.entries()) {
    const slope = slopes[index] ?? 0;
    const half = (minus + plus) / 2;
    const own = (slope * half) ** 2 / 3;
    variance += own;
    shift += (slope * (plus - minus)) / 2;
    // What goes as 1 / value rises more below the value than a straight line says: by -ln(1 - t) and not by t.
    const below = -Math.log1p(-Math.min(minus, MOST_BELOW));
    worstUp += Math.max(slope * plus, -slope * below);
    worstDown += Math.max(slope * below, -slope * plus);
    shares.push({ part, parameter: ref.parameter, share: own });
  }
  const contributors = shares
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share)
    .slice(0, 5)
    .map((entry) => ({ ...entry, share: entry.share / variance }));
  return { sigma: Math.sqrt(variance), shift, worstDown, worstUp, contributors };
}
