import type { Fault } from "./fault.ts";
import type { FaultSolver } from "./faultSolver.ts";
import type { Ground } from "./ground.ts";
import type { Judged } from "./judged.ts";
import type { Fit, Likelihood } from "./likelihood.ts";

/** A single fault, with slopes of its own where they are known. */
export interface Relaid {
  judged: Judged;
  slopes?: Float64Array;
}

/** Pairs that are simulated, and reported at most. */
const MOST_PAIRS = 8;
/** How far a part that drifted unnoticed may be off: one standard deviation of the logarithm. common-practice: up to a factor of two or so. */
const DRIFT = 0.5;
/** A drift of less than this is tolerance. */
const LEAST_DRIFT = 0.2;
/** Chance that some other part has drifted beyond its tolerance beside the real fault. common-practice, rough. */
const BESIDE = 0.05;

/**
 * A drifted resistor beside a single fault: for every leading single and every resistor, the likelihood when that resistor's value is
 * let loose, which is one more term of the covariance; the best pairs are then simulated.
 *
 * @returns pairs with their weight; the drifted part's estimate is in `second`
 */
export function judgeDoubles(
  relaid: readonly Relaid[],
  ground: Ground,
  solver: FaultSolver,
  likelihood: Likelihood,
  wanted: ReadonlySet<number>,
): (Judged & { second: Fault })[] {
  const width = ground.parameters.length;
  const drifting = ground.parameters.flatMap(({ key, part, deviation }, column) => {
    const [element = "", parameter] = key.split("|");
    return parameter === "ohms" && !element.includes("/") && deviation > 0 ? [{ column, element, part, deviation }] : [];
  });
  const looked = relaid.flatMap(({ judged, slopes = ground.slopes }) =>
    drifting
      .filter(({ part }) => part !== judged.fault.part)
      .map(({ column, element, part, deviation }) => {
        const loose = Float64Array.from(slopes);
        for (const index of likelihood.indices) loose[index * width + column] = (slopes[index * width + column]! * DRIFT) / deviation;
        const fit = likelihood.fit(judged.predicted, { slopes: loose });
        const shift = likelihood.estimate(judged.predicted, loose, column) * DRIFT;
        return { judged, element, part, shift, gain: fit.logLikelihood - judged.fit.logLikelihood };
      }),
  );
  const best = looked
    .filter(({ shift, gain }) => Math.abs(shift) > LEAST_DRIFT && gain > 3)
    .sort((a, b) => b.judged.logWeight + b.gain - a.judged.logWeight - a.gain);
  return best.slice(0, MOST_PAIRS).flatMap(({ judged, element, part, shift }) => {
    const nominal = ohmsOf(ground, element);
    if (nominal === undefined) return [];
    const second: Fault = {
      kind: shift > 0 ? "drift-high" : "drift-low",
      part,
      element,
      parameter: "ohms",
      nominal,
      value: nominal * Math.exp(shift),
    };
    const predicted = solver.predict([judged.edit, second], wanted, { effort: "fine" });
    if (predicted === undefined) return [];
    const fit: Fit = likelihood.fit(predicted);
    const beside = BESIDE / drifting.length;
    // A unit of weight less for a value that was fitted rather than integrated over.
    const logWeight = judged.logWeight - judged.fit.logLikelihood + fit.logLikelihood + Math.log(beside) - 1;
    return [{ ...judged, second, prior: judged.prior * beside, fit, logWeight, predicted: merged(judged.predicted, predicted) }];
  });
}

/** What was simulated for the pair, and beyond it what the single says. */
const merged = (single: Float64Array, pair: Float64Array): Float64Array =>
  pair.map((value, index) => (Number.isNaN(value) ? single[index]! : value));

function ohmsOf(ground: Ground, element: string): number | undefined {
  for (const { network } of ground.situations) {
    const found = network.elements.find(({ id }) => id === element);
    if (found?.kind === "resistor") return found.ohms;
  }
  return undefined;
}
