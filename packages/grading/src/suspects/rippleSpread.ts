import { type ChangedSolver, CircuitError, changedSolver, type Element, scaleParameter } from "@underchassis/calc";
import { type Ground, parameterKey, probeOf, type Situation } from "./ground.ts";

/** Elements whose halves cancel each other in a sound chassis: what one of them is off by shows as its square, or its size. */
const BALANCED: ReadonlySet<Element["kind"]> = new Set<Element["kind"]>(["transformer", "vacuum-diode", "diode", "selenium", "gas-diode"]);

/** Mean and spread of the size of what is normally distributed about nothing, as shares of its deviation. */
const MEAN_SHARE = 0.8;
const SPREAD_SHARE = 0.6;

/**
 * What unequal halves of transformers and rectifiers make of the ripple. Where they balance, ripple has no slope to either side and
 * rises to both, so that each value is moved up and down by its deviation: half the difference is the slope, and the mean of both is an
 * offset of the reading and a spread of its own.
 *
 * Writes into `slopes`, `offsets` and `soft` of the ground.
 *
 * @param wanted readings that matter
 */
export function spreadRipple(ground: Ground, hertz: number, wanted: ReadonlySet<number>): void {
  for (const situation of ground.situations) {
    const ripples = situation.indices.filter((index) => wanted.has(index) && ground.observables[index]!.quantity === "ripple-volts");
    if (ripples.length === 0 || situation.steady === undefined) continue;
    const solver = changedSolver(situation.network, { hertz, islands: "tie" });
    /** What alternates at another frequency than the ripple of the sound chassis adds up by squares. */
    const added = new Float64Array(ripples.length);
    const middle = ripples.map((index) => ground.nominal[index]!);
    const kinds = new Map(situation.network.elements.map((element) => [element.id, element]));
    for (const { ref, part } of situation.compiled.uncertain) {
      const element = kinds.get(ref.element);
      if (element === undefined || !BALANCED.has(element.kind)) continue;
      const column = ground.parameters.findIndex(({ key }) => key === parameterKey(ref, part === "line" ? situation.key : ""));
      const deviation = ground.parameters[column]?.deviation ?? 0;
      const both = [1 + deviation, 1 - deviation].map((factor) =>
        read(solver, situation, element, scaleParameter(element, ref, factor), ground, ripples),
      );
      const [up, down] = both;
      const same = read(solver, situation, element, element, ground, ripples);
      if (up === undefined || down === undefined || same === undefined) continue;
      for (const [k, index] of ripples.entries()) {
        const bend = (up[k]! + down[k]!) / 2 - same[k]!;
        ground.slopes[index * ground.parameters.length + column] = (up[k]! - down[k]!) / 2;
        added[k] = added[k]! + Math.max(0, (middle[k]! + bend) ** 2 - middle[k]! ** 2);
      }
    }
    for (const [k, index] of ripples.entries()) {
      const bend = Math.sqrt(middle[k]! ** 2 + added[k]!) - middle[k]!;
      ground.offsets[index] = ground.offsets[index]! + MEAN_SHARE * bend;
      ground.soft[index] = Math.hypot(ground.soft[index]!, SPREAD_SHARE * bend);
    }
  }
}

function read(
  solver: ChangedSolver,
  { network, compiled }: Situation,
  before: Element,
  after: Element,
  ground: Ground,
  indices: readonly number[],
): number[] | undefined {
  try {
    const steady =
      before === after
        ? solver.base
        : solver.near({ ...network, elements: network.elements.map((element) => (element === before ? after : element)) });
    if (steady === undefined) return undefined;
    return indices.map((index) => {
      const probe = probeOf(compiled, ground.observables[index]!);
      return probe === undefined ? Number.NaN : steady.read(probe) * ground.loading[index]!;
    });
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}
