import type { Circuit } from "./circuit.ts";
import type { Plan, Trajectory } from "./march.ts";
import type { PortNewton } from "./port-newton.ts";
import type { StageReduction } from "./reduction.ts";
import { EXTRAPOLATE } from "./stage-scheme.ts";

/** Slopes count as unchanged within this share, as they do for the factors of Newton's method. */
const SAME_SHARE = 1e-3;
const SAME_SIEMENS = 1e-14;

/** A step in which every port keeps its slopes: its matrix, and that matrix squared again and again. */
interface SteadyStep {
  reduction: StageReduction;
  slopes: Float64Array;
  stage: Float64Array;
  powers: Float64Array[];
}

/**
 * Carries d end / d start along a march. Steps in which the ports keep their slopes (rectifiers blocked) are only counted,
 * and made up for by powers of one step's matrix.
 */
export class TransitionCarrier {
  private readonly circuit: Circuit;
  private readonly newton: PortNewton;
  private readonly states: number;
  private transition: Float64Array;
  private firstStage: Float64Array;
  private secondStart: Float64Array;
  private spare: Float64Array;
  private readonly work: { port: Float64Array; amps: Float64Array };
  private steady: SteadyStep | undefined;
  private count = 0;
  private waiting = false;
  /** Slopes at the end of the last step, when it was carried by itself. */
  private readonly last: Float64Array;
  private lastReduction: StageReduction | undefined;

  constructor(circuit: Circuit, newton: PortNewton) {
    this.circuit = circuit;
    this.newton = newton;
    this.states = circuit.states.length + circuit.fluxPorts.length;
    const block = this.states * this.states;
    const ports = circuit.ports.length;
    this.transition = new Float64Array(0);
    this.firstStage = new Float64Array(block);
    this.secondStart = new Float64Array(block);
    this.spare = new Float64Array(block);
    this.work = { port: new Float64Array(ports * this.states), amps: new Float64Array(ports * this.states) };
    this.last = new Float64Array(ports * ports);
  }

  /** Starts a march; `transition` is filled by `finish`. */
  begin(transition: Float64Array): void {
    this.transition = transition;
    identity(this.states, transition);
    this.count = 0;
    this.waiting = false;
    this.lastReduction = undefined;
  }

  /** After the first stage of a step has been solved. */
  first(reduction: StageReduction): void {
    if (this.keeps(reduction)) {
      this.waiting = true;
      return;
    }
    this.flush();
    this.carry(reduction, this.transition, this.firstStage);
  }

  /** After the second stage of a step has been solved. */
  second(reduction: StageReduction): void {
    const { states, transition, firstStage, secondStart, newton } = this;
    if (this.waiting) {
      this.waiting = false;
      if (same(newton.netSlopes, this.steady!.slopes)) {
        this.count++;
        return;
      }
      this.flush();
      multiply(states, this.steady!.stage, transition, firstStage);
    }
    const extrapolate = EXTRAPOLATE;
    for (let k = 0; k < firstStage.length; k++) secondStart[k] = transition[k]! + extrapolate * (firstStage[k]! - transition[k]!);
    this.carry(reduction, secondStart, transition);
    this.last.set(newton.netSlopes);
    this.lastReduction = reduction;
  }

  finish(): void {
    this.flush();
  }

  /** Whether this stage has the slopes of the steady step at hand; makes one when slopes have stood still since the last step. */
  private keeps(reduction: StageReduction): boolean {
    const { newton, circuit } = this;
    if (circuit.fluxPorts.length > 0) return false;
    const { steady } = this;
    if (steady?.reduction === reduction && same(newton.netSlopes, steady.slopes)) return true;
    if (this.count > 0 || this.lastReduction !== reduction || !same(newton.netSlopes, this.last)) return false;
    this.steady = this.steadyStep(reduction);
    return true;
  }

  /** The step with the slopes that the ports have now. */
  private steadyStep(reduction: StageReduction): SteadyStep {
    const { states } = this;
    const unit = new Float64Array(states * states);
    identity(states, unit);
    const stage = new Float64Array(states * states);
    this.carry(reduction, unit, stage);
    const start = new Float64Array(states * states);
    for (let k = 0; k < start.length; k++) start[k] = unit[k]! + EXTRAPOLATE * (stage[k]! - unit[k]!);
    const step = new Float64Array(states * states);
    multiply(states, stage, start, step);
    return { reduction, slopes: Float64Array.from(this.newton.netSlopes), stage, powers: [step] };
  }

  private flush(): void {
    if (this.count > 0) this.spare = raise(this.states, this.steady!.powers, this.count, this.transition, this.spare);
    this.count = 0;
  }

  mean(plan: Plan, record: Trajectory, reductionOf: (stepSeconds: number) => StageReduction): Float64Array {
    const { circuit, newton, states } = this;
    const ports = circuit.ports.length;
    const slopes = new Float64Array(ports * ports);
    const held = Float64Array.from(newton.scratch.volts);
    for (let stage = 0; stage < record.stages; stage++) {
      newton.scratch.volts.set(record.portVolts.subarray(stage * ports, (stage + 1) * ports));
      newton.evaluateNet();
      for (let k = 0; k < slopes.length; k++) slopes[k] = slopes[k]! + record.weights[stage]! * newton.netSlopes[k]!;
    }
    newton.scratch.volts.set(held);
    const transition = new Float64Array(states * states);
    identity(states, transition);
    plan.stepSeconds.forEach((stepSeconds, level) => {
      const reduction = reductionOf(stepSeconds);
      newton.adopt(slopes, reduction.portPort);
      const { powers } = this.steadyStep(reduction);
      const count = plan.levels.reduce((sum, other) => (other === level ? sum + 1 : sum), 0);
      this.spare = raise(states, powers, count, transition, this.spare);
    });
    return transition;
  }

  /** Carries columns through the stage just solved: `columns` (states x states) becomes d stageState / d initial. */
  private carry(reduction: StageReduction, columns: Float64Array, out: Float64Array): void {
    const { newton, circuit, work } = this;
    const { states: n, ports: p } = reduction;
    const width = this.states;
    const { port, amps } = work;
    for (let k = 0; k < p; k++) {
      for (let c = 0; c < width; c++) port[k * width + c] = 0;
      for (let j = 0; j < n; j++) {
        const factor = reduction.portState[k * n + j]!;
        if (factor !== 0) for (let c = 0; c < width; c++) port[k * width + c] = port[k * width + c]! + factor * columns[j * width + c]!;
      }
      for (let f = 0; f < circuit.fluxPorts.length; f++) {
        const at = circuit.fluxPorts[f]!.port;
        const factor = reduction.portPort[k * p + at]! * newton.scratch.fluxSlopes[at]!;
        for (let c = 0; c < width; c++) port[k * width + c] = port[k * width + c]! - factor * columns[(n + f) * width + c]!;
      }
    }
    newton.respond(port, width);
    for (let k = 0; k < p; k++) {
      for (let c = 0; c < width; c++) amps[k * width + c] = 0;
      for (let j = 0; j < p; j++) {
        const slope = newton.netSlopes[k * p + j]!;
        if (slope !== 0) for (let c = 0; c < width; c++) amps[k * width + c] = amps[k * width + c]! + slope * port[j * width + c]!;
      }
    }
    for (let f = 0; f < circuit.fluxPorts.length; f++) {
      const at = circuit.fluxPorts[f]!.port;
      const slope = newton.scratch.fluxSlopes[at]!;
      for (let c = 0; c < width; c++) amps[at * width + c] = amps[at * width + c]! + slope * columns[(n + f) * width + c]!;
    }
    for (let k = 0; k < n; k++) {
      for (let c = 0; c < width; c++) out[k * width + c] = 0;
      for (let j = 0; j < n; j++) {
        const factor = reduction.stateState[k * n + j]!;
        if (factor !== 0) for (let c = 0; c < width; c++) out[k * width + c] = out[k * width + c]! + factor * columns[j * width + c]!;
      }
      for (let j = 0; j < p; j++) {
        const factor = reduction.statePort[k * p + j]!;
        if (factor !== 0) for (let c = 0; c < width; c++) out[k * width + c] = out[k * width + c]! - factor * amps[j * width + c]!;
      }
    }
    for (let f = 0; f < circuit.fluxPorts.length; f++) {
      const { port: at, device } = circuit.fluxPorts[f]!;
      const lent = circuit.ports[at]!.lent;
      for (let c = 0; c < width; c++) {
        const volts = port[at * width + c]!;
        const change = volts - device.flux.ohms * (amps[at * width + c]! + lent * volts);
        out[(n + f) * width + c] = columns[(n + f) * width + c]! + change / reduction.perSecond;
      }
    }
  }
}

function identity(size: number, out: Float64Array): void {
  out.fill(0);
  for (let k = 0; k < size; k++) out[k * size + k] = 1;
}

function same(a: Float64Array, b: Float64Array): boolean {
  for (let k = 0; k < a.length; k++) if (Math.abs(a[k]! - b[k]!) > SAME_SHARE * Math.abs(a[k]!) + SAME_SIEMENS) return false;
  return true;
}

/** out = a * b, square. */
function multiply(size: number, a: Float64Array, b: Float64Array, out: Float64Array): void {
  out.fill(0);
  for (let row = 0; row < size; row++) {
    const base = row * size;
    for (let k = 0; k < size; k++) {
      const factor = a[base + k]!;
      if (factor === 0) continue;
      const from = k * size;
      for (let c = 0; c < size; c++) out[base + c] = out[base + c]! + factor * b[from + c]!;
    }
  }
}

/** Multiplies `onto` from the left by a matrix raised to `count`; `powers` are its squares, made as they are needed. Returns the spare block. */
function raise(size: number, powers: Float64Array[], count: number, onto: Float64Array, spare: Float64Array): Float64Array {
  for (let bit = 0; count >> bit > 0; bit++) {
    if (bit === powers.length) {
      const square = new Float64Array(size * size);
      multiply(size, powers[bit - 1]!, powers[bit - 1]!, square);
      powers.push(square);
    }
    if (((count >> bit) & 1) === 0) continue;
    multiply(size, powers[bit]!, onto, spare);
    onto.set(spare);
  }
  return spare;
}
