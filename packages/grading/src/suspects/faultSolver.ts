import { type ChangedSolver, CircuitError, changedSolver, type Network, type Probe, type SteadyState } from "@underchassis/calc";
import { applyFault } from "./applyFault.ts";
import { atRest } from "./atRest.ts";
import { coldTransfer, ohmsOf, pointIndex } from "./coldTransfer.ts";
import type { Fault } from "./fault.ts";
import { type Ground, probeOf, type Situation } from "./ground.ts";
import { scaled } from "./observable.ts";

type Effort = "near" | "coarse" | "fine";
type Hopeless = (soFar: Float64Array) => boolean;

/** Predicts what every observable of a chassis shows with one fault in it. */
export class FaultSolver {
  readonly #ground: Ground;
  readonly #hertz: number;
  readonly #probes: readonly (Probe | undefined)[];
  readonly #solvers = new Map<string, ChangedSolver>();
  /** Cold first: it costs least. */
  readonly #inOrder: readonly Situation[];
  /** Networks solved so far. */
  solved = 0;

  constructor(ground: Ground, hertz: number) {
    this.#ground = ground;
    this.#hertz = hertz;
    this.#inOrder = [...ground.situations].sort((a, b) => effortOf(a) - effortOf(b));
    const of = new Map(ground.situations.flatMap((situation) => situation.indices.map((index) => [index, situation.compiled] as const)));
    this.#probes = ground.observables.map((observable, index) => {
      const compiled = of.get(index);
      return compiled === undefined ? undefined : probeOf(compiled, observable);
    });
  }

  /**
   * Scaled readings under a fault, or several at once.
   *
   * @param wanted which observables; the others stay NaN, and their situations are not simulated
   * @param hopeless called between situations with what is known so far; true when the rest is not worth simulating
   * @returns undefined when the faulty network has no steady state, or is hopeless
   */
  predict(
    faults: readonly Fault[],
    wanted: ReadonlySet<number>,
    { effort = "coarse", hopeless = () => false }: { effort?: "coarse" | "fine"; hopeless?: Hopeless } = {},
  ): Float64Array | undefined {
    const found = this.#predict(faults, wanted, effort, hopeless);
    return found === "far" ? undefined : found;
  }

  /** The same with few steps; `far` where the chassis without the fault is no help, so that it would take long. */
  near(faults: readonly Fault[], wanted: ReadonlySet<number>, hopeless: Hopeless): Float64Array | "far" | undefined {
    return this.#predict(faults, wanted, "near", hopeless);
  }

  #predict(faults: readonly Fault[], wanted: ReadonlySet<number>, effort: Effort, hopeless: Hopeless): Float64Array | "far" | undefined {
    const out = new Float64Array(this.#ground.observables.length).fill(Number.NaN);
    let begun = false;
    for (const situation of this.#inOrder) {
      const indices = situation.indices.filter((index) => wanted.has(index));
      if (indices.length === 0) continue;
      if (begun && hopeless(out)) return undefined;
      begun = true;
      const network = faulty(situation, faults);
      if (network === undefined) {
        // The part is not there in this condition, so that the fault does not show.
        for (const index of indices) out[index] = this.#ground.nominal[index]!;
        continue;
      }
      try {
        if (!this.#read(situation, network, indices, out, effort)) return "far";
      } catch (error) {
        if (error instanceof CircuitError) return undefined;
        throw error;
      }
    }
    return out;
  }

  #read(situation: Situation, network: Network, indices: readonly number[], out: Float64Array, effort: Effort): boolean {
    const { observables, loading } = this.#ground;
    this.solved += 1;
    if (situation.steady === undefined) {
      const resting = atRest(network);
      const index = pointIndex(resting);
      const transfer = coldTransfer(resting, index);
      for (const k of indices) {
        const { at, to } = observables[k]!;
        const [from, other] = [situation.compiled.pointOf(at), situation.compiled.pointOf(to)];
        if (from !== undefined && other !== undefined) out[k] = scaled("ohms", ohmsOf(resting, index, transfer, from, other));
      }
      return true;
    }
    const solver = this.#solver(situation, effort === "fine" ? "fine" : "coarse");
    const steady = effort === "near" ? solver.near(network) : solver.solve(network);
    if (steady === undefined) return false;
    for (const index of indices) {
      const probe = this.#probes[index];
      if (probe !== undefined) out[index] = read(steady, probe) * loading[index]!;
    }
    return true;
  }

  #solver({ key, network }: Situation, effort: "coarse" | "fine"): ChangedSolver {
    const name = `${effort} ${key}`;
    const known = this.#solvers.get(name);
    if (known !== undefined) return known;
    const made = changedSolver(network, { hertz: this.#hertz, islands: "tie", coarse: effort === "coarse" });
    this.#solvers.set(name, made);
    return made;
  }

  /** How many networks were solved from a neighbour, and how many from nothing. */
  get counts(): { quick: number; whole: number } {
    const all = [...this.#solvers.values()].map(({ counts }) => counts);
    return { quick: all.reduce((sum, { quick }) => sum + quick, 0), whole: all.reduce((sum, { whole }) => sum + whole, 0) };
  }
}

/** A point that nothing is left of reads nothing, and so does a part that is gone. */
function read(steady: SteadyState, probe: Probe): number {
  if ("element" in probe) return steady.elements.has(probe.element) ? steady.read(probe) : 0;
  if (probe.quantity === "dc-volts") return (steady.points.get(probe.from)?.meanVolts ?? 0) - (steady.points.get(probe.to)?.meanVolts ?? 0);
  return steady.points.has(probe.from) && steady.points.has(probe.to) ? steady.read(probe) : 0;
}

function faulty({ network }: Situation, faults: readonly Fault[]): Network | undefined {
  let changed: Network | undefined;
  for (const fault of faults) changed = applyFault(changed ?? network, fault) ?? changed;
  return changed;
}

/** Cold networks cost nothing beside powered ones; of these the one with most readings tells most. */
const effortOf = ({ steady, indices }: Situation): number => (steady === undefined ? -1e6 : -indices.length);
