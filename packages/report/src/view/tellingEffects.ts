import type { Report } from "@underchassis/dataset";

type Effect = Report["changes"][number]["effects"][number];

/** A shift below this share of the larger value tells nobody anything. */
const smallestShift = 0.03;

/** Shift as a share of the larger value, 0 to 2; 0 where either is not known. */
function shift({ before, after }: Effect): number {
  if (before === null || after === null) return 0;
  const largest = Math.max(Math.abs(before), Math.abs(after));
  return largest === 0 ? 0 : Math.abs(after - before) / largest;
}

/** Whether the change carries the figure across its limit, either way. */
function crosses({ before, after, limit }: Effect): boolean {
  return limit !== undefined && before !== null && after !== null && before > limit !== after > limit;
}

/** The effects that say most of a change: first those that cross a limit, then by relative shift. At most `most`. */
export function tellingEffects(effects: readonly Effect[], most: number): readonly Effect[] {
  return effects
    .filter((effect) => crosses(effect) || shift(effect) >= smallestShift)
    .sort((one, other) => Number(crosses(other)) - Number(crosses(one)) || shift(other) - shift(one))
    .slice(0, most);
}
