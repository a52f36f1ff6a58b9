import { nearestPreferred, preferredSeries, type SeriesName } from "../quantities/preferred/series.ts";
import type { Candidate } from "./substitution.ts";

/** A share within this of nought is none: rounding of doubles. */
const nothing = 1e-9;

const within = (value: number, lowest: number, highest: number): boolean =>
  value >= lowest * (1 - nothing) && value <= highest * (1 + nothing);

/** How far a value lies from the old one, as a share of the old one, cut to six figures. */
export function deviationOf(value: number, old: number): number {
  const share = Number((value / old - 1).toPrecision(6));
  return Math.abs(share) < nothing ? 0 : share;
}

/** Every member of a series within the limits, nearest to the old value first. */
function membersOf(series: SeriesName, old: number, lowest: number, highest: number): number[] {
  const found: number[] = [];
  const figures = (preferredSeries[series][0] ?? 10) === 10 ? 1 : 2;
  for (let power = Math.floor(Math.log10(lowest)) - 1; power <= Math.ceil(Math.log10(highest)); power += 1) {
    for (const member of preferredSeries[series]) {
      const value = Number(`${member}e${power - figures}`);
      if (within(value, lowest, highest)) found.push(value);
    }
  }
  const distance = (value: number): number => Math.abs(Math.log(value / old));
  return found.toSorted((one, other) => distance(one) - distance(other));
}

/**
 * Preferred values within the limits, nearest to `old` first, at most `count`; each under the coarsest of the series that has
 * it. Values in ohms or farads; limits positive.
 */
export function preferredWithin(
  old: number,
  limits: { lowest: number; highest: number },
  series: readonly SeriesName[],
  count = 3,
): Candidate[] {
  const found = new Map<number, SeriesName>();
  for (const name of series) {
    for (const value of membersOf(name, old, limits.lowest, limits.highest)) if (!found.has(value)) found.set(value, name);
  }
  return [...found]
    .map(([value, name]) => ({ value, deviation: deviationOf(value, old), series: name }))
    .toSorted((one, other) => Math.abs(Math.log(one.value / old)) - Math.abs(Math.log(other.value / old)))
    .slice(0, count);
}

/** The first of a list of ratings that is at least `least`; undefined when none is. */
export function ratingFrom(list: readonly number[], least: number): number | undefined {
  return list.find((rating) => rating >= least * (1 - nothing));
}

/**
 * Two E12 capacitors in parallel whose sum comes nearest to `farads`, the larger first; undefined when no pair comes closer than
 * `share` of it.
 */
export function parallelPair(farads: number, share: number): readonly [number, number] | undefined {
  let best: readonly [number, number] | undefined;
  let miss = share * farads;
  for (const larger of membersOf("E12", farads, farads / 2, farads * 0.99)) {
    const smaller = nearestPreferred(farads - larger, "E12");
    const off = Math.abs(larger + smaller - farads);
    if (smaller <= larger && off < miss - nothing * farads) {
      miss = off;
      best = [larger, smaller];
    }
  }
  return best;
}
