import type { Ground } from "./ground.ts";
import { deviationOf } from "./groups.ts";
import type { Observable } from "./observable.ts";

/** A measurement to make, what it is worth, and what the leading suspects say it will show. */
export interface NextMeasurement {
  index: number;
  observable: Observable;
  /** Expected information in bits. */
  bits: number;
  /** Relative cost of making it. */
  cost: number;
}

/** Cost of a reading: a look at ohms costs least, live voltages more, ripple needs a scope. common-practice, rough. */
const COST = { ohms: 1, "dc-volts": 2, "ripple-volts": 4, "ac-volts": 3, "dc-amps": 6, "ac-amps": 6 } as const;
/** Less than this is not worth a measurement. */
const LEAST_BITS = 0.02;
/** Cold ohms come first as long as they tell at least this share of what the best live reading would. */
const COLD_SHARE = 0.45;
const BINS = 80;

/**
 * The measurement with the largest expected information about which suspect it is, one step ahead (greedy choice is close to the best:
 * de Kleer, Raiman and Shirley 1991). Cold ohms go first wherever they tell much.
 *
 * @param beliefs what stands for each group: predicted readings and weight, healthy chassis included
 * @param coldOnly no powered measurement may be proposed
 */
export function nextMeasurement(
  ground: Ground,
  beliefs: readonly { predicted: Float64Array; weight: number }[],
  candidates: readonly number[],
  coldOnly: boolean,
): NextMeasurement | undefined {
  const total = beliefs.reduce((sum, { weight }) => sum + weight, 0);
  const scored = candidates.flatMap((index): NextMeasurement[] => {
    const observable = ground.observables[index]!;
    if (coldOnly && observable.quantity !== "ohms") return [];
    const bits = information(ground, index, beliefs, total);
    return bits < LEAST_BITS ? [] : [{ index, observable, bits, cost: COST[observable.quantity] }];
  });
  const best = (list: readonly NextMeasurement[]) =>
    list.reduce<NextMeasurement | undefined>((a, b) => (a === undefined || worth(b) > worth(a) ? b : a), undefined);
  const most = Math.max(0, ...scored.map(({ bits }) => bits));
  const cold = best(scored.filter(({ observable }) => observable.quantity === "ohms"));
  if (cold !== undefined && cold.bits >= COLD_SHARE * most) return cold;
  return best(scored);
}

/** Bits, less a little for what they cost: among equals the easier one. */
const worth = ({ bits, cost }: NextMeasurement): number => bits / (1 + 0.05 * cost);

/** Entropy of the mixture of what the suspects predict, less the entropy of each one's own spread, in bits. */
function information(
  ground: Ground,
  index: number,
  beliefs: readonly { predicted: Float64Array; weight: number }[],
  total: number,
): number {
  const known = beliefs.flatMap(({ predicted, weight }) => {
    const mean = predicted[index]!;
    return Number.isNaN(mean) ? [] : [{ mean, deviation: deviationOf(ground, index, mean), weight: weight / total }];
  });
  const mass = known.reduce((sum, { weight }) => sum + weight, 0);
  if (mass < 0.5) return 0;
  // Readings are put into bins of their own spread, on a scale that is fine where the suspects are.
  const edges = known.flatMap(({ mean, deviation }) => [mean - 3 * deviation, mean + 3 * deviation]).sort((a, b) => a - b);
  const cuts =
    edges.length > BINS ? Array.from({ length: BINS + 1 }, (_, k) => edges[Math.floor((k * (edges.length - 1)) / BINS)]!) : fill(edges);
  let bits = 0;
  let beforeTotal = 0;
  const before = known.map(() => 0);
  for (const cut of [...cuts, Number.POSITIVE_INFINITY]) {
    const shares = known.map(({ mean, deviation }, k) => {
      const below = normalBelow((cut - mean) / deviation);
      const share = Math.max(0, below - before[k]!);
      before[k] = below;
      return share;
    });
    const all = known.reduce((sum, { weight }, k) => sum + (weight / mass) * shares[k]!, 0);
    beforeTotal += all;
    if (all <= 0) continue;
    for (const [k, { weight }] of known.entries()) {
      const share = shares[k]!;
      if (share > 0) bits += (weight / mass) * share * Math.log2(share / all);
    }
  }
  return beforeTotal > 0 ? Math.max(0, bits) * mass : 0;
}

/** More cuts between few edges, so that a bin is no wider than a deviation or so. */
function fill(edges: readonly number[]): number[] {
  const parts = Math.max(1, Math.floor(BINS / Math.max(1, edges.length)));
  return edges.flatMap((edge, k) => {
    const next = edges[k + 1];
    return next === undefined ? [edge] : Array.from({ length: parts }, (_, j) => edge + ((next - edge) * j) / parts);
  });
}

/** Normal distribution function (Abramowitz and Stegun 7.1.26, error below 1.5e-7). */
function normalBelow(z: number): number {
  if (z > 8) return 1;
  if (z < -8) return 0;
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const erf = 1 - ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) * t * Math.exp(-x * x);
  return z >= 0 ? 0.5 * (1 + erf) : 0.5 * (1 - erf);
}
