import type { Circuit } from "./circuit.ts";
import { PortNewton } from "./port-newton.ts";
import { type Reduction, reduceCircuit, type StageReduction, sourceBasis, sourceCount } from "./reduction.ts";
import { CircuitError } from "./solution.ts";
import { EXTRAPOLATE, STAGE_SHARE } from "./stage-scheme.ts";
import { TransitionCarrier } from "./transition-carrier.ts";

/** Steps of a march: for each step the index of its size in `stepSeconds`. */
export interface Plan {
  stepSeconds: readonly number[];
  levels: Uint8Array;
}

/** A plan of equal steps over one period. */
export function evenPlan(hertz: number, steps: number): Plan {
  return { stepSeconds: [1 / hertz / steps], levels: new Uint8Array(steps) };
}

/** What a march leaves behind: two stages a step, from which every unknown can be computed. */
export interface Trajectory {
  stages: number;
  states: number;
  /** Share of the span that each stage stands for; they add up to 1. */
  weights: Float64Array;
  /** Time in seconds of each stage. */
  times: Float64Array;
  /** Index into the reductions. */
  levels: Uint8Array;
  /** Stores at the start of each stage (history), [stage][store]. */
  histories: Float64Array;
  /** Stores at the end of each stage. */
  results: Float64Array;
  netAmps: Float64Array;
  portVolts: Float64Array;
  basis: Float64Array;
}

/** Marches a circuit through time on precomputed reductions. */
export class Marcher {
  readonly circuit: Circuit;
  readonly newton: PortNewton;
  /** Linear stores, then fluxes. */
  readonly states: number;
  private readonly reductions = new Map<number, Reduction>();
  private readonly stageReduction: (stepSeconds: number) => StageReduction;
  private readonly openVolts: Float64Array;
  private readonly basis: Float64Array;
  private readonly stageState: Float64Array;
  private readonly history: Float64Array;
  private carrier: TransitionCarrier | undefined;

  /** @param stageReduction gives what a step of this many seconds needs, when it is not the plain reduction of the circuit */
  constructor(circuit: Circuit, stageReduction?: (stepSeconds: number) => StageReduction) {
    this.circuit = circuit;
    this.stageReduction = stageReduction ?? ((stepSeconds) => this.reduction(stepSeconds));
    this.newton = new PortNewton(circuit);
    this.states = circuit.states.length + circuit.fluxPorts.length;
    this.openVolts = new Float64Array(circuit.ports.length);
    this.basis = new Float64Array(sourceCount(circuit));
    this.stageState = new Float64Array(this.states);
    this.history = new Float64Array(this.states);
  }

  /** Reduction for steps of this many seconds. */
  reduction(stepSeconds: number): Reduction {
    let found = this.reductions.get(stepSeconds);
    if (found === undefined) {
      found = reduceCircuit(this.circuit, 1 / (STAGE_SHARE * stepSeconds));
      this.reductions.set(stepSeconds, found);
    }
    return found;
  }

  emptyTrajectory(plan: Plan): Trajectory {
    const stages = 2 * plan.levels.length;
    const { states, newton } = this;
    return {
      stages,
      states,
      weights: new Float64Array(stages),
      times: new Float64Array(stages),
      levels: new Uint8Array(stages),
      histories: new Float64Array(stages * states),
      results: new Float64Array(stages * states),
      netAmps: new Float64Array(stages * newton.size),
      portVolts: new Float64Array(stages * newton.size),
      basis: new Float64Array(stages * this.basis.length),
    };
  }

  /** One implicit stage: from `history` to `stageState` at a time; the port solution stays in `newton`. */
  private stage(reduction: StageReduction, seconds: number): void {
    const { newton, openVolts, basis, history, stageState } = this;
    const { states: n, ports: p, sources: s } = reduction;
    sourceBasis(this.circuit, seconds, basis, 0);
    for (let k = 0; k < p; k++) {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += reduction.portState[k * n + j]! * history[j]!;
      for (let j = 0; j < s; j++) sum += reduction.portSource[k * s + j]! * basis[j]!;
      openVolts[k] = sum;
    }
    newton.setFlux(history, n, reduction.perSecond);
    if (!newton.solve(reduction.portPort, openVolts)) {
      const names = this.circuit.devices.map((device) => device.id);
      throw new CircuitError("no-convergence", `no solution for ${names.join(", ")} at ${seconds.toPrecision(4)} s`, [], names);
    }
    const { netAmps, scratch } = newton;
    for (let k = 0; k < n; k++) {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += reduction.stateState[k * n + j]! * history[j]!;
      for (let j = 0; j < s; j++) sum += reduction.stateSource[k * s + j]! * basis[j]!;
      for (let j = 0; j < p; j++) sum -= reduction.statePort[k * p + j]! * netAmps[j]!;
      stageState[k] = sum;
    }
    for (let k = 0; k < this.circuit.fluxPorts.length; k++) {
      const { port, device } = this.circuit.fluxPorts[k]!;
      const amps = netAmps[port]! + this.circuit.ports[port]!.lent * scratch.volts[port]!;
      stageState[n + k] = history[n + k]! + (scratch.volts[port]! - device.flux.ohms * amps) / reduction.perSecond;
    }
  }

  private carry(transition: Float64Array): TransitionCarrier {
    this.carrier ??= new TransitionCarrier(this.circuit, this.newton);
    this.carrier.begin(transition);
    return this.carrier;
  }

  /**
   * Transition over a recorded march as if its ports kept the mean of their slopes throughout: a good guess at the true one
   * where stores are slow against the period, at a fraction of its cost.
   *
   * @returns undefined for a circuit with memory ports
   */
  meanTransition(plan: Plan, record: Trajectory): Float64Array | undefined {
    if (this.circuit.fluxPorts.length > 0) return undefined;
    this.carrier ??= new TransitionCarrier(this.circuit, this.newton);
    return this.carrier.mean(plan, record, (stepSeconds) => this.stageReduction(stepSeconds));
  }

  /**
   * Marches through a plan.
   *
   * @param state stores at the start, overwritten with those at the end
   * @param startSeconds time of the first step's start, for the sources
   * @param transition when given, overwritten with d end / d start (row-major, states x states)
   * @param record when given, filled with both stages of every step
   */
  march(plan: Plan, state: Float64Array, startSeconds: number, transition?: Float64Array, record?: Trajectory): void {
    const { states, history, stageState } = this;
    const reductions = plan.stepSeconds.map((step) => this.stageReduction(step));
    const carrier = transition === undefined ? undefined : this.carry(transition);
    const [share, extrapolate] = [STAGE_SHARE, EXTRAPOLATE];
    let span = 0;
    for (let k = 0; k < plan.levels.length; k++) span += plan.stepSeconds[plan.levels[k]!]!;
    let seconds = startSeconds;
    for (let step = 0; step < plan.levels.length; step++) {
      const level = plan.levels[step]!;
      const size = plan.stepSeconds[level]!;
      const reduction = reductions[level]!;
      history.set(state);
      this.stage(reduction, seconds + share * size);
      if (record !== undefined) this.store(record, 2 * step, level, seconds + share * size, ((1 - share) * size) / span);
      carrier?.first(reduction);
      for (let k = 0; k < states; k++) history[k] = state[k]! + extrapolate * (stageState[k]! - state[k]!);
      seconds += size;
      this.stage(reduction, seconds);
      if (record !== undefined) this.store(record, 2 * step + 1, level, seconds, (share * size) / span);
      carrier?.second(reduction);
      state.set(stageState);
    }
    carrier?.finish();
  }

  private store(record: Trajectory, stage: number, level: number, seconds: number, weight: number): void {
    const { states, newton } = this;
    record.weights[stage] = weight;
    record.times[stage] = seconds;
    record.levels[stage] = level;
    record.histories.set(this.history, stage * states);
    record.results.set(this.stageState, stage * states);
    record.netAmps.set(newton.netAmps, stage * newton.size);
    record.portVolts.set(newton.scratch.volts, stage * newton.size);
    record.basis.set(this.basis, stage * this.basis.length);
  }
}
