import type { Circuit } from "./compile.ts";
import type { Marcher, Plan, Trajectory } from "./march.ts";
import { factorizeSmall, solveSmall } from "./small-lu.ts";
import { CircuitError } from "./solution.ts";

/** Least scale against which a store's correction is judged: volts of a capacitor, amperes of a coil, volt-seconds of a flux. */
const LEAST_SCALE = { volts: 0.1, amps: 1e-3, flux: 1e-3 };

/** Outcome of shooting: the periodic state and how it was reached. */
export interface PeriodicState {
  /** Stores at the start of the period. */
  state: Float64Array;
  /** d state(T) / d state(0) along the last period marched with it. */
  transition: Float64Array;
  iterations: number;
}

/**
 * Solves (I - M) dx = r with complete pivoting. A direction that the period leaves exactly as it was (the flux of a
 * lossless core) has no determined value; its shift is left at zero.
 */
export function solvePeriodic(size: number, transition: Float64Array, residual: Float64Array): Float64Array {
  const a = new Float64Array(size * size);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      a[row * size + column] = (row === column ? 1 : 0) - transition[row * size + column]!;
    }
  }
  const pivots = new Int32Array(size);
  const solution = Float64Array.from(residual);
  for (let k = 0; k < size; k++) {
    let silent = true;
    for (let j = 0; j < size; j++) if (Math.abs(a[k * size + j]!) > 1e-12 || Math.abs(a[j * size + k]!) > 1e-12) silent = false;
    if (!silent) continue;
    a[k * size + k] = 1;
    solution[k] = 0;
  }
  if (!factorizeSmall(size, a, pivots)) throw new CircuitError("singular", "the period does not determine the stores");
  solveSmall(size, a, pivots, solution, 1);
  return solution;
}

/** Largest correction of a set of stores, against each one's own size. */
function relativeSize(circuit: Circuit, change: Float64Array, ...states: Float64Array[]): number {
  let largest = 0;
  for (let k = 0; k < change.length; k++) {
    let scale = k < circuit.states.length ? LEAST_SCALE[circuit.states[k]!.kind] : LEAST_SCALE.flux;
    for (const state of states) scale = Math.max(scale, Math.abs(state[k]!));
    largest = Math.max(largest, Math.abs(change[k]!) / scale);
  }
  return largest;
}

/**
 * Newton's method on the state at the start of a period: the one to which the period returns. A slow network costs no
 * more than a fast one, since the correction sees the whole decay.
 *
 * @param state first guess, overwritten with the result
 * @param options `tolerance` relative correction at which to stop; `record` is filled with the last period marched;
 *   `chord` uses this transition matrix instead of a fresh one each time
 * @throws CircuitError `no-convergence`
 */
export function shoot(
  marcher: Marcher,
  plan: Plan,
  state: Float64Array,
  options: { tolerance: number; maxIterations: number; record?: Trajectory; chord?: Float64Array },
): PeriodicState {
  const { circuit, states } = marcher;
  const transition = options.chord ?? new Float64Array(states * states);
  const end = new Float64Array(states);
  const residual = new Float64Array(states);
  let last = Number.POSITIVE_INFINITY;
  let stalls = 0;
  for (let pass = 1; pass <= options.maxIterations; pass++) {
    end.set(state);
    marcher.march(plan, end, 0, options.chord === undefined ? transition : undefined, options.record);
    for (let k = 0; k < states; k++) residual[k] = end[k]! - state[k]!;
    const change = solvePeriodic(states, transition, residual);
    const size = relativeSize(circuit, change, state, end);
    if (size < options.tolerance) {
      // The recorded period keeps its own start; a better start would leave it by less than the tolerance.
      if (options.record === undefined) for (let k = 0; k < states; k++) state[k] = state[k]! + change[k]!;
      return { state, transition, iterations: pass };
    }
    stalls = size > 0.7 * last ? stalls + 1 : 0;
    last = size;
    if (!Number.isFinite(size) || stalls >= 3) {
      // Newton does not contract: let the circuit run for a while, then try again from there.
      stalls = 0;
      last = Number.POSITIVE_INFINITY;
      state.set(end);
      for (let period = 0; period < 5; period++) marcher.march(plan, state, 0);
      continue;
    }
    for (let k = 0; k < states; k++) state[k] = state[k]! + change[k]!;
  }
  const names = circuit.states.map((slot) => slot.id);
  throw new CircuitError("no-convergence", `no periodic state after ${options.maxIterations} periods`, [], names);
}
