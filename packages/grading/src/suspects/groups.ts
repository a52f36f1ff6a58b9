import { type Ground, stretchOf } from "./ground.ts";
import type { Judged } from "./judged.ts";
import { ownVariance } from "./likelihood.ts";

/** A suspect with its share of belief, or several that no available reading can tell apart; the likeliest speaks for the others. */
export interface Group {
  posterior: number;
  members: readonly { judged: Judged; posterior: number }[];
}

/** Predictions closer than this many standard deviations of a single reading cannot be told apart. */
const ALIKE = 1;

/** Standard deviation of one reading under a hypothesis: meter, model, and the spread of healthy parts. */
export function deviationOf(ground: Ground, index: number, predicted: number): number {
  const { quantity } = ground.observables[index]!;
  const width = ground.parameters.length;
  const healthy = ground.nominal[index]!;
  let variance = 0;
  for (let k = 0; k < width; k += 1) variance += ground.slopes[index * width + k]! ** 2;
  const stretch = stretchOf(quantity, predicted, healthy, ground.volts);
  return Math.sqrt(variance * stretch ** 2 + ownVariance(ground, index, predicted));
}

/** Groups hypotheses whose predictions agree wherever a meter could be put. */
export function groupsOf(ranked: readonly { judged: Judged; posterior: number }[], ground: Ground): Group[] {
  const groups: { judged: Judged; posterior: number }[][] = [];
  for (const entry of ranked) {
    const home = groups.find(([speaker]) => speaker !== undefined && alike(speaker.judged, entry.judged, ground));
    if (home === undefined) groups.push([entry]);
    else home.push(entry);
  }
  return groups
    .map((members) => ({ members, posterior: members.reduce((sum, { posterior }) => sum + posterior, 0) }))
    .sort((a, b) => b.posterior - a.posterior);
}

function alike(one: Judged, other: Judged, ground: Ground): boolean {
  return ground.observables.every((_, index) => {
    const [a, b] = [one.predicted[index]!, other.predicted[index]!];
    if (Number.isNaN(a) || Number.isNaN(b)) return true;
    return Math.abs(a - b) <= ALIKE * deviationOf(ground, index, a);
  });
}
