import type { StageTemplate } from "@underchassis/dataset";

/** Terminals and inner points of a template. */
export function pointsOf({ terminals, points }: StageTemplate): ReadonlySet<string> {
  return new Set([...terminals.map(({ id }) => id), ...Object.keys(points ?? {})]);
}
