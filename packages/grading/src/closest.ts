import { distance, closest as nearest } from "fastest-levenshtein";

/** The candidate that is nearest to what was written, by edit distance; undefined when nothing is near enough to be a likely slip. */
export function closest(written: string, candidates: readonly string[]): string | undefined {
  if (candidates.length === 0) return undefined;
  const best = nearest(written, candidates);
  return distance(written, best) <= Math.max(2, Math.floor(written.length / 2)) ? best : undefined;
}
