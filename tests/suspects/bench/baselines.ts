/** What a search has to beat: the likeliest fault whatever was read, and the fault whose nominal readings lie nearest. */
import type { ChassisModel, Reading } from "../../../packages/grading/src/model/index.ts";
import { enumerateFaults } from "../../../packages/grading/src/suspects/enumerate.ts";
import { editAt, faultAt } from "../../../packages/grading/src/suspects/family.ts";
import type { Fault } from "../../../packages/grading/src/suspects/fault.ts";
import { FaultSolver } from "../../../packages/grading/src/suspects/faultSolver.ts";
import { lay } from "../../../packages/grading/src/suspects/ground.ts";
import { type Observable, observableKey, observableOf, scaled } from "../../../packages/grading/src/suspects/observable.ts";
import { priorsOf } from "../../../packages/grading/src/suspects/priors.ts";

export interface Hypothesis {
  fault: Fault;
  edit: Fault;
  prior: number;
}

/** Below this, volts differ by nothing. */
const LEAST_VOLTS = 0.1;
/** So many of the nearest by the first readings are looked at again with what was measured after. */
const SHORT_LIST = 40;

/** Every fault that the search would look at; of a range of values, its middle. */
export function hypothesesOf(model: ChassisModel): Hypothesis[] {
  const compiled = model.compile({ life: "found", condition: "operating", line: "actual" });
  const { singles, families } = enumerateFaults(model, "found", [compiled], priorsOf(model));
  const members = families.flatMap((family) =>
    family.members.map(({ kind, at, prior }) => {
      const value = typeof at === "number" ? at : Math.sqrt(Math.max(at[0], 1e-12) * at[1]);
      return { fault: faultAt(family, kind, value), edit: editAt(family, value), prior };
    }),
  );
  return [...singles.map(({ fault, prior }) => ({ fault, edit: fault, prior })), ...members];
}

/** The likeliest first; ties in the order of enumeration. */
export const byPrior = (hypotheses: readonly Hypothesis[]): Hypothesis[] => [...hypotheses].sort((a, b) => b.prior - a.prior);

/** Ranks the hypotheses of one chassis by the distance of their nominal readings from what was read. */
export class NearestSignature {
  private readonly model: ChassisModel;
  private readonly hypotheses: readonly Hypothesis[];
  private readonly known = new Map<string, (Float64Array | undefined)[]>();

  constructor(model: ChassisModel, hypotheses: readonly Hypothesis[]) {
    this.model = model;
    this.hypotheses = hypotheses;
  }

  private predictions(observables: readonly Observable[], hypotheses: readonly Hypothesis[]): (Float64Array | undefined)[] {
    const ground = lay(this.model, "found", observables);
    const solver = new FaultSolver(ground, this.model.line.hertz);
    const all = new Set(observables.map((_, index) => index));
    return hypotheses.map(({ edit }) => solver.predict([edit], all));
  }

  /** @param first how many of the readings every case of this chassis begins with */
  rank(readings: readonly Reading[], first: number): Hypothesis[] {
    const begin = readings.slice(0, first);
    const key = begin.map((reading) => observableKey(observableOf(reading))).join(" ");
    const stored = this.known.get(key) ?? this.predictions(begin.map(observableOf), this.hypotheses);
    this.known.set(key, stored);
    const scored = this.hypotheses.map((hypothesis, i) => ({ hypothesis, distance: distance(begin, stored[i]) }));
    scored.sort((a, b) => a.distance - b.distance);
    const list = scored.slice(0, SHORT_LIST);
    const later = readings.slice(first);
    if (later.length > 0) {
      const more = this.predictions(
        later.map(observableOf),
        list.map(({ hypothesis }) => hypothesis),
      );
      for (const [i, entry] of list.entries()) entry.distance = Math.hypot(entry.distance, distance(later, more[i]));
      list.sort((a, b) => a.distance - b.distance);
    }
    return list.map(({ hypothesis }) => hypothesis);
  }
}

/** Root of the sum of squared relative differences. */
function distance(readings: readonly Reading[], predicted: Float64Array | undefined): number {
  if (predicted === undefined) return Number.POSITIVE_INFINITY;
  let sum = 0;
  for (const [i, { quantity, value }] of readings.entries()) {
    const [read, said] = [scaled(quantity, value), predicted[i] ?? Number.NaN];
    if (Number.isNaN(said)) continue;
    const size = quantity === "ohms" ? 1 : Math.max(Math.abs(read), Math.abs(said), LEAST_VOLTS);
    sum += ((read - said) / size) ** 2;
  }
  return Math.sqrt(sum);
}
