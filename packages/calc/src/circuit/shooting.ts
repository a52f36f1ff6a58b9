import { BorrowedInverse } from "./borrowed-inverse.ts";
import type { Circuit } from "./circuit.ts";
import type { Marcher, Plan, Trajectory } from "./march.ts";
import { PeriodicFactors } from "./periodic-factors.ts";
import { CircuitError } from "./solution.ts";

/** Least scale against which a store's correction is judged: volts of a capacitor, amperes of a coil, volt-seconds of a flux. */
const LEAST_SCALE = { volts: 0.1, amps: 1e-3, flux: 1e-3 };

/** A borrowed transition matrix, mended as it goes, is kept while corrections shrink at least so fast. */
const CHORD_SHRINK = 0.7;

/** With so few stores a fresh matrix costs less than the extra periods that a borrowed one takes. */
const CHEAP_STORES = 6;

/** Guessed transition matrices that are tried before our own is carried. */
const MOST_REFRESHES = 20;

/** Periods in which an inverse that came with a state must finish: mended longer than that it may only seem to. */
const MOST_ON_TRUST = 5;

/** Outcome of shooting: the periodic state and how it was reached. */
export interface PeriodicState {
  /** Stores at the start of the period. */
  state: Float64Array;
  /** d state(T) / d state(0) along the last period marched with it. */
  transition: Float64Array;
  /** The mended inverse that led here; absent when a fresh transition matrix did. */
  inverse?: BorrowedInverse;
  iterations: number;
}

/** A residual this many times that before the step, and not negligible, tells of a step beyond what is linear. */
const WORSE = 2.5;
const NEGLIGIBLE = 1e-4;
const LEAST_SHARE = 1e-8;
const FREE_OVERSHOOTS = 3;
const MOST_RIGHTED = 8;

/**
 * Shortens Newton steps that overshoot: with no load a supply's period either tops its capacitor up or leaves it alone,
 * and a step from the one side lands far on the other. The first two such steps are let pass, since a step into a new regime may
 * look worse before it is better.
 */
class Backtrack {
  private held: { state: Float64Array; change: Float64Array; residual: Float64Array } | undefined;
  private share = 1;
  private overshoots = 0;
  private righted = 0;

  /**
   * Whether a state should be run for a period before it is judged: a prediction may be one that the circuit cannot be in
   * (a choke current against its rectifier). It hides the overshoots of an unloaded supply, so it is tried a few times only.
   */
  rights(): boolean {
    if (this.overshoots < FREE_OVERSHOOTS || this.righted >= MOST_RIGHTED) return false;
    this.righted++;
    return true;
  }

  /** Judges the state that the last step led to by its residual; on refusal `state` is set to a shorter step. */
  refuses(circuit: Circuit, state: Float64Array, residual: Float64Array): boolean {
    const { held } = this;
    if (held === undefined) return false;
    const before = relativeSize(circuit, held.residual, held.state, state);
    if (relativeSize(circuit, residual, held.state, state) <= Math.max(WORSE * before, NEGLIGIBLE)) return false;
    if (this.share === 1) this.overshoots++;
    if (this.overshoots < FREE_OVERSHOOTS || this.share < LEAST_SHARE) return false;
    this.share /= 4;
    for (let k = 0; k < state.length; k++) state[k] = held.state[k]! + this.share * held.change[k]!;
    return true;
  }

  /** Remembers where the step about to be taken starts. */
  hold(state: Float64Array, change: Float64Array, residual: Float64Array): void {
    this.held = { state: Float64Array.from(state), change, residual: Float64Array.from(residual) };
    this.share = 1;
  }

  forget(): void {
    this.held = undefined;
    this.share = 1;
  }
}

/** Size against which each store's correction is judged: its own, in any of the states given. */
export function scalesOf(circuit: Circuit, ...states: Float64Array[]): Float64Array {
  return states[0]!.map((_, k) =>
    states.reduce(
      (largest, state) => Math.max(largest, Math.abs(state[k]!)),
      k < circuit.states.length ? LEAST_SCALE[circuit.states[k]!.kind] : LEAST_SCALE.flux,
    ),
  );
}

/** Largest correction of a set of stores, against each one's own size. */
function relativeSize(circuit: Circuit, change: Float64Array, ...states: Float64Array[]): number {
  const scales = scalesOf(circuit, ...states);
  let largest = 0;
  for (let k = 0; k < change.length; k++) largest = Math.max(largest, Math.abs(change[k]!) / scales[k]!);
  return largest;
}

/**
 * Newton's method on the state at the start of a period: the one to which the period returns. A slow network costs no
 * more than a fast one, since the correction sees the whole decay.
 *
 * @param state first guess, overwritten with the result
 * @param options `tolerance` relative correction at which to stop; `record` is filled with the last period marched;
 *   `chord` is a transition matrix from a coarser plan or a similar circuit: it serves as long as corrections shrink fast,
 *   since carrying a fresh one along costs several times the march itself; `inverse` is one already made of `chord`;
 *   `moved` is called after each march and tells that the equations themselves have changed, so that it cannot be the last;
 *   `refresh` guesses a transition matrix from the period just marched: it is asked instead of carrying one;
 *   `trusted` judges `inverse` by the first period recorded
 * @throws CircuitError `no-convergence`
 */
export function shoot(
  marcher: Marcher,
  plan: Plan,
  state: Float64Array,
  options: {
    tolerance: number;
    maxIterations: number;
    record?: Trajectory;
    chord?: Float64Array;
    inverse?: BorrowedInverse;
    moved?: () => boolean;
    refresh?: () => Float64Array | undefined;
    trusted?: () => boolean;
  },
): PeriodicState {
  const { circuit, states } = marcher;
  const chord = states > CHEAP_STORES || options.inverse !== undefined ? options.chord : undefined;
  const transition = chord === undefined ? new Float64Array(states * states) : Float64Array.from(chord);
  let borrowed = options.inverse ?? (chord === undefined ? undefined : new BorrowedInverse(transition, scalesOf(circuit, state)));
  const end = new Float64Array(states);
  const residual = new Float64Array(states);
  let last = Number.POSITIVE_INFINITY;
  let stalls = 0;
  let poor = 0;
  let refreshes = options.refresh === undefined ? 0 : MOST_REFRESHES;
  const backtrack = new Backtrack();
  for (let pass = 1; pass <= options.maxIterations; pass++) {
    end.set(state);
    const carried = borrowed === undefined && refreshes === 0;
    marcher.march(plan, end, 0, carried ? transition : undefined, options.record);
    const moved = options.moved?.() ?? false;
    if (pass === 1 && borrowed !== undefined && options.trusted?.() === false) {
      borrowed = undefined;
      continue;
    }
    for (let k = 0; k < states; k++) residual[k] = end[k]! - state[k]!;
    if (refreshes > 0 && (borrowed === undefined || (moved && chord === undefined))) {
      const guess = options.refresh!();
      refreshes = guess === undefined ? 0 : refreshes - 1;
      if (guess !== undefined) {
        transition.set(guess);
        borrowed = new BorrowedInverse(transition, scalesOf(circuit, state));
        poor = 0;
      }
    }
    if (borrowed === undefined && refreshes === 0 && !carried) continue;
    if (borrowed === undefined && backtrack.refuses(circuit, state, residual)) {
      if (backtrack.rights()) marcher.march(plan, state, 0);
      continue;
    }
    const change = borrowed === undefined ? new PeriodicFactors(states, transition).solve(residual) : borrowed.step(residual);
    const size = relativeSize(circuit, change, state, end);
    if (size < options.tolerance && !moved) {
      // The recorded period keeps its own start; a better start would leave it by less than the tolerance.
      if (options.record === undefined) for (let k = 0; k < states; k++) state[k] = state[k]! + change[k]!;
      return { state, transition, iterations: pass, ...(borrowed === undefined ? {} : { inverse: borrowed }) };
    }
    if (options.trusted !== undefined && borrowed !== undefined && pass >= MOST_ON_TRUST) {
      borrowed = undefined;
      last = Number.POSITIVE_INFINITY;
      continue;
    }
    if (borrowed !== undefined) {
      poor = size > CHORD_SHRINK * last ? poor + 1 : 0;
      if (poor >= 2 || size > 10 * last) {
        // The borrowed matrix is not good enough here: from now on carry our own.
        borrowed = undefined;
        last = Number.POSITIVE_INFINITY;
        continue;
      }
    }
    stalls = borrowed === undefined && size > 0.7 * last ? stalls + 1 : 0;
    last = size;
    if (!Number.isFinite(size) || stalls >= 3) {
      // Newton does not contract: let the circuit run for a while, then try again from there.
      stalls = 0;
      last = Number.POSITIVE_INFINITY;
      state.set(end);
      for (let period = 0; period < 5; period++) marcher.march(plan, state, 0);
      backtrack.forget();
      continue;
    }
    if (borrowed === undefined) backtrack.hold(state, change, residual);
    for (let k = 0; k < states; k++) state[k] = state[k]! + change[k]!;
    if (backtrack.rights()) marcher.march(plan, state, 0);
  }
  const names = circuit.states.map((slot) => slot.id);
  throw new CircuitError("no-convergence", `no periodic state after ${options.maxIterations} periods`, [], names);
}
