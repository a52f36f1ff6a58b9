import { BorrowedInverse } from "./borrowed-inverse.ts";
import type { Marcher, Plan, Trajectory } from "./march.ts";
import { QuietFold } from "./quiet-fold.ts";
import { scalesOf, shoot } from "./shooting.ts";
import { CircuitError } from "./solution.ts";

const PERIODS = 40;
/** Share of a quiet port's voltage within which its tangent is kept, at least. */
const LEAST_SHARE = 1e-4;

/** A transition matrix and its mended inverse, to start the shooting of the whole circuit with. */
export interface QuietStart {
  chord: Float64Array;
  inverse: BorrowedInverse;
  /** Whether the tubes are as quiet as they were taken to be, in a recorded march of the whole circuit. */
  trusted: () => boolean;
}

/**
 * Finds the periodic state of a circuit with its tubes and regulators taken as linear about their means: so nearly right in a
 * chassis without signal that the whole circuit then needs a period or two. Where it finds none, nothing is changed.
 *
 * @param state stores to start from, overwritten when a state is found; port voltages are taken from the marcher and left there
 * @param trajectory where the march of the whole circuit will be recorded
 * @param tolerance relative correction at which to stop
 * @returns undefined when the circuit has no such device, or no state was found
 */
export function quietStart(
  whole: Marcher,
  plan: Plan,
  state: Float64Array,
  tolerance: number,
  trajectory: Trajectory,
  chord: { chord?: Float64Array; inverse?: BorrowedInverse },
): QuietStart | undefined {
  const fold = QuietFold.of(whole);
  if (fold === undefined) return undefined;
  const { marcher } = fold;
  const record = marcher.emptyTrajectory(plan);
  const share = Math.max(tolerance, LEAST_SHARE);
  const found = Float64Array.from(state);
  fold.start(whole.newton.scratch.volts);
  try {
    const trusted = (): boolean => fold.wasQuiet(trajectory);
    const moved = (): boolean => fold.relinearize(plan, record, share);
    const refresh = (): Float64Array | undefined => marcher.meanTransition(plan, record);
    const periodic = shoot(marcher, plan, found, { tolerance, maxIterations: PERIODS, record, moved, refresh, ...chord });
    if (!found.every(Number.isFinite)) return undefined;
    state.set(found);
    fold.handOver();
    if (chord.chord === undefined) {
      // A guessed matrix has served so far; those that follow get a true one.
      const transition = new Float64Array(state.length ** 2);
      marcher.march(plan, found, 0, transition);
      return { chord: transition, inverse: new BorrowedInverse(transition, scalesOf(whole.circuit, state)), trusted };
    }
    // What it learnt from the folded circuit must not be mended by the residual of the whole one.
    const inverse = periodic.inverse?.copy() ?? new BorrowedInverse(periodic.transition, scalesOf(whole.circuit, state));
    return { chord: periodic.transition, inverse, trusted };
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}
