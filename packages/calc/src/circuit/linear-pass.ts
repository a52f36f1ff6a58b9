import type { Circuit } from "./circuit.ts";
import type { Injection } from "./injection.ts";
import { PortNewton } from "./port-newton.ts";
import type { Reduction } from "./reduction.ts";
import type { Waves } from "./waves.ts";

/** Sums over the period, weighted by one probe's gain, of everything that the probes are made of; column by column. */
export interface Sums {
  gain: Float64Array;
  states: Float64Array;
  netAmps: Float64Array;
  /** Kept only for probes that read a device's current. */
  portVolts: Float64Array | undefined;
  /** Weighted sum of each row injection's signal, by parameter. */
  signals: number[][];
}

/** One linear pass along a solution: changes of stores and ports for unit initial stores and for each parameter. */
export class LinearPass {
  readonly columns: number;
  readonly end: Float64Array;
  private readonly circuit: Circuit;
  private readonly waves: Waves;
  private readonly reduction: Reduction;
  private readonly injections: readonly Injection[];
  private readonly newton: PortNewton;
  private readonly start: number;
  private history: Float64Array;
  private stage: Float64Array;
  private readonly volts: Float64Array;
  private readonly amps: Float64Array;
  /** Response of ports and stores to a unit of each row injection. */
  private readonly kicks: { column: number; signal: Float64Array; ports: Float64Array; states: Float64Array }[] = [];

  constructor(circuit: Circuit, waves: Waves, injections: readonly Injection[]) {
    this.circuit = circuit;
    this.waves = waves;
    this.reduction = waves.reductions[0]!;
    this.injections = injections;
    this.newton = new PortNewton(circuit);
    const states = waves.trajectory.states;
    this.start = states;
    this.columns = states + injections.length;
    this.end = new Float64Array(states * this.columns);
    this.history = new Float64Array(states * this.columns);
    this.stage = new Float64Array(states * this.columns);
    this.volts = new Float64Array(circuit.ports.length * this.columns);
    this.amps = new Float64Array(circuit.ports.length * this.columns);
    const drop = (response: Float64Array, slots: readonly { plus: number; minus: number }[]): Float64Array =>
      Float64Array.from(slots, ({ plus, minus }) => (plus < 0 ? 0 : response[plus]!) - (minus < 0 ? 0 : response[minus]!));
    injections.forEach((injection, k) => {
      for (const { signal, response } of injection.rows) {
        this.kicks.push({ column: this.start + k, signal, ports: drop(response, circuit.ports), states: drop(response, circuit.states) });
      }
    });
  }

  run(sums: readonly Sums[]): void {
    const { trajectory, stagesPerStep } = this.waves;
    const { columns, start } = this;
    const constant = stagesPerStep === 1;
    if (!constant) for (let k = 0; k < start; k++) this.end[k * columns + k] = 1;
    const extrapolate = 1 + Math.SQRT2;
    for (let stage = 0; stage < trajectory.stages; stage++) {
      if (constant || stage % 2 === 0) this.history.set(this.end);
      else for (let k = 0; k < this.end.length; k++) this.history[k] = this.end[k]! + extrapolate * (this.stage[k]! - this.end[k]!);
      this.step(stage, constant);
      for (const sum of sums) {
        const gain = sum.gain[stage]!;
        if (gain === 0) continue;
        accumulate(sum.states, this.history, gain);
        accumulate(sum.netAmps, this.amps, gain);
        if (sum.portVolts !== undefined) accumulate(sum.portVolts, this.volts, gain);
        this.injections.forEach((injection, k) => {
          injection.rows.forEach((row, r) => {
            sum.signals[k]![r] = sum.signals[k]![r]! + gain * row.signal[stage]!;
          });
        });
      }
      if (!constant && stage % 2 === 1) this.end.set(this.stage);
    }
  }

  private step(stage: number, constant: boolean): void {
    const { circuit, reduction, newton, columns, history, volts, amps, waves } = this;
    const { states: n, ports: p, portPort, portState, stateState, statePort } = reduction;
    const { trajectory } = waves;
    newton.scratch.volts.set(trajectory.portVolts.subarray(stage * p, (stage + 1) * p));
    newton.setFlux(trajectory.histories.subarray(stage * trajectory.states, (stage + 1) * trajectory.states), n, reduction.perSecond);
    newton.linearize(portPort);
    volts.fill(0);
    amps.fill(0);
    if (!constant) multiplyAdd(p, n, portState, history, columns, volts, 1);
    for (const { column, signal, ports } of this.kicks) {
      const value = signal[stage]!;
      for (let k = 0; k < p; k++) volts[k * columns + column] = volts[k * columns + column]! + value * ports[k]!;
    }
    // Currents that change at fixed port voltages: by a device's own parameter, or by the flux it remembers.
    this.injections.forEach((injection, k) => {
      for (const { port, signal } of injection.ports) {
        amps[port * columns + this.start + k] = amps[port * columns + this.start + k]! + signal[stage]!;
      }
    });
    if (!constant) {
      circuit.fluxPorts.forEach(({ port }, f) => {
        const slope = newton.scratch.fluxSlopes[port]!;
        for (let c = 0; c < columns; c++) amps[port * columns + c] = amps[port * columns + c]! + slope * history[(n + f) * columns + c]!;
      });
    }
    multiplyAdd(p, p, portPort, amps, columns, volts, -1);
    newton.respond(volts, columns);
    multiplyAdd(p, p, newton.netSlopes, volts, columns, amps, 1);
    if (constant) return;
    this.stage.fill(0);
    multiplyAdd(n, n, stateState, history, columns, this.stage, 1);
    multiplyAdd(n, p, statePort, amps, columns, this.stage, -1);
    for (const { column, signal, states } of this.kicks) {
      const value = signal[stage]!;
      for (let k = 0; k < n; k++) this.stage[k * columns + column] = this.stage[k * columns + column]! + value * states[k]!;
    }
    circuit.fluxPorts.forEach(({ port, device }, f) => {
      const { lent } = circuit.ports[port]!;
      for (let c = 0; c < columns; c++) {
        const v = volts[port * columns + c]!;
        const i = amps[port * columns + c]! + lent * v;
        this.stage[(n + f) * columns + c] = history[(n + f) * columns + c]! + (v - device.flux.ohms * i) / reduction.perSecond;
      }
      this.injections.forEach((injection, k) => {
        for (const drive of injection.drives) {
          if (drive.port !== port) continue;
          const place = (n + f) * columns + this.start + k;
          this.stage[place] = this.stage[place]! + drive.signal[stage]! / reduction.perSecond;
        }
      });
    });
  }
}

function accumulate(into: Float64Array, from: Float64Array, factor: number): void {
  for (let k = 0; k < into.length; k++) into[k] = into[k]! + factor * from[k]!;
}

/** out += sign * a * b, with a (rows x inner) and b (inner x columns). */
function multiplyAdd(
  rows: number,
  inner: number,
  a: Float64Array,
  b: Float64Array,
  columns: number,
  out: Float64Array,
  sign: number,
): void {
  for (let row = 0; row < rows; row++) {
    const base = row * columns;
    for (let k = 0; k < inner; k++) {
      const factor = sign * a[row * inner + k]!;
      if (factor === 0) continue;
      const from = k * columns;
      for (let c = 0; c < columns; c++) out[base + c] = out[base + c]! + factor * b[from + c]!;
    }
  }
}
