import type { Circuit } from "./compile.ts";
import { type HotOhms, type Injection, injectionOf } from "./injection.ts";
import type { Network, Thermistor } from "./network.ts";
import { PortNewton } from "./port-newton.ts";
import { directShare } from "./probe-direct.ts";
import { type Functional, probeFunctional, probeGain, probeWave } from "./probe-reading.ts";
import type { Reduction } from "./reduction.ts";
import { filamentOhms, thermistorSlope } from "./self-heating.ts";
import { solvePeriodic } from "./shooting.ts";
import { factorizeSmall, solveSmall } from "./small-lu.ts";
import type { ParameterRef, Probe, Sensitivities, SteadyState } from "./solution.ts";
import { solveSteady } from "./steady.ts";
import { SteadySolution } from "./steady-solution.ts";
import { waveFigures } from "./wave-figures.ts";
import type { Waves } from "./waves.ts";

/** Sums over the period, weighted by one probe's gain, of everything that the probes are made of; column by column. */
interface Sums {
  gain: Float64Array;
  states: Float64Array;
  netAmps: Float64Array;
  /** Kept only for probes that read a device's current. */
  portVolts: Float64Array | undefined;
  /** Weighted sum of each row injection's signal, by parameter. */
  signals: number[][];
}

/** One linear pass along a solution: changes of stores and ports for unit initial stores and for each parameter. */
class LinearPass {
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

/** Change of one probe in every column. */
function probeChanges(waves: Waves, functional: Functional, sums: Sums, injections: readonly Injection[], columns: number): Float64Array {
  const { circuit, trajectory } = waves;
  const { responses, width, states: n, ports: p } = waves.reductions[0]!;
  const out = new Float64Array(columns);
  for (const { row, factor } of functional.rows) {
    if (row < 0) continue;
    const base = row * width;
    for (let k = 0; k < n; k++) {
      const gain = factor * responses[base + k]!;
      if (gain !== 0) for (let c = 0; c < columns; c++) out[c] = out[c]! + gain * sums.states[k * columns + c]!;
    }
    for (let k = 0; k < p; k++) {
      const gain = factor * responses[base + n + k]!;
      if (gain !== 0) for (let c = 0; c < columns; c++) out[c] = out[c]! - gain * sums.netAmps[k * columns + c]!;
    }
    injections.forEach((injection, q) => {
      const column = trajectory.states + q;
      injection.rows.forEach(({ response }, r) => {
        out[column] = out[column]! + factor * response[row]! * sums.signals[q]![r]!;
      });
    });
  }
  for (const { port } of functional.ports) {
    const { lent } = circuit.ports[port]!;
    for (let c = 0; c < columns; c++) out[c] = out[c]! + sums.netAmps[port * columns + c]! + lent * sums.portVolts![port * columns + c]!;
  }
  for (const { state, factor } of functional.histories) {
    for (let c = 0; c < columns; c++) out[c] = out[c]! + factor * sums.states[state * columns + c]!;
  }
  return out;
}

/**
 * Lets the temperatures of filaments and thermistors follow: a change of their current changes their resistance, which
 * changes the current again. `changes` is [probe][parameter], hot elements last in both.
 */
function followHeat(waves: Waves, hot: readonly string[], probes: number, parameters: number, changes: Float64Array[]): void {
  const h = hot.length;
  if (h === 0) return;
  const { circuit, trajectory, stagesPerStep } = waves;
  const matrix = new Float64Array(h * h);
  const right = new Float64Array(h * parameters);
  hot.forEach((id, row) => {
    const rms = waveFigures(waves.amps(id), trajectory.weights, stagesPerStep).rms;
    const element = circuit.elements.get(id)!;
    const ohms = circuit.conditions.ohms.get(id)!;
    let slope = 0;
    if (element.kind === "filament" && rms > 0) {
      const step = 1e-5 * rms;
      slope = (filamentOhms(element, rms + step) - filamentOhms(element, rms - step)) / (2 * step * ohms);
    } else if (element.kind === "thermistor") slope = thermistorSlope(element as Thermistor, ohms, rms);
    for (let k = 0; k < h; k++) matrix[row * h + k] = (row === k ? 1 : 0) - slope * changes[probes + row]![parameters + k]!;
    for (let q = 0; q < parameters; q++) right[row * parameters + q] = slope * changes[probes + row]![q]!;
  });
  const pivots = new Int32Array(h);
  if (!factorizeSmall(h, matrix, pivots)) return;
  solveSmall(h, matrix, pivots, right, parameters);
  for (let probe = 0; probe < probes; probe++) {
    for (let q = 0; q < parameters; q++) {
      for (let k = 0; k < h; k++) changes[probe]![q] = changes[probe]![q]! + changes[probe]![parameters + k]! * right[k * parameters + q]!;
    }
  }
}

/**
 * Sensitivities of probes to parameters: change of each probe per relative change of each parameter, exact for the
 * discretised steady state (forward sensitivities along its linearisation, with the shift of the periodic state). Hot
 * filaments and thermistors follow their currents; which gas tubes are lit stays as it is.
 *
 * @param steady a solution of this network; found anew when it is absent
 * @throws CircuitError `bad-value`, `unknown-point`, and as `solveSteady`
 */
export function sensitivities(
  network: Network,
  probes: readonly Probe[],
  parameters: readonly ParameterRef[],
  steady?: SteadyState,
): Sensitivities {
  const solution = steady instanceof SteadySolution ? steady : (solveSteady(network) as SteadySolution);
  const { waves } = solution;
  const { circuit } = solution.internals;
  const { trajectory } = waves;
  const hot = [...circuit.conditions.ohms.keys()];
  const hotProbes = hot.map((id): Probe => ({ quantity: "rms-amps", element: id }));
  const references: (ParameterRef | HotOhms)[] = [...parameters, ...hot.map((id) => ({ hotOhms: id }))];
  const injections = references.map((reference) => injectionOf(circuit, waves, reference));
  const pass = new LinearPass(circuit, waves, injections);
  const allProbes = [...probes, ...hotProbes];
  const gains = allProbes.map((probe) => probeGain(waves, probe, probeWave(waves, probe)));
  const sumsByGain = new Map<Float64Array, Sums>();
  const functionals = allProbes.map((probe) => probeFunctional(waves, probe));
  for (const gain of gains) {
    if (sumsByGain.has(gain)) continue;
    const readsPorts = functionals.some((functional, k) => gains[k] === gain && functional.ports.length > 0);
    sumsByGain.set(gain, {
      gain,
      states: new Float64Array(trajectory.states * pass.columns),
      netAmps: new Float64Array(circuit.ports.length * pass.columns),
      portVolts: readsPorts ? new Float64Array(circuit.ports.length * pass.columns) : undefined,
      signals: injections.map((injection) => injection.rows.map(() => 0)),
    });
  }
  pass.run([...sumsByGain.values()]);
  const n = trajectory.states;
  const shifts = waves.stagesPerStep === 1 ? undefined : initialShifts(n, pass.columns, pass.end);
  const changes = allProbes.map((probe, index) => {
    const raw = probeChanges(waves, functionals[index]!, sumsByGain.get(gains[index]!)!, injections, pass.columns);
    return Float64Array.from(references, (reference, q) => {
      let change = raw[n + q]! + directShare(waves, probe, reference, injections[q]!, gains[index]!);
      if (shifts !== undefined) for (let k = 0; k < n; k++) change += raw[k]! * shifts[q]![k]!;
      return change;
    });
  });
  followHeat(waves, hot, probes.length, parameters.length, changes);
  const matrix = new Float64Array(probes.length * parameters.length);
  probes.forEach((_, row) => {
    matrix.set(changes[row]!.subarray(0, parameters.length), row * parameters.length);
  });
  return { probes, parameters, values: Float64Array.from(probes, (probe) => solution.read(probe)), matrix };
}

/** Shift of the stores at the start of the period for each parameter: (I - M)^-1 of what the period adds. */
function initialShifts(n: number, columns: number, end: Float64Array): Float64Array[] {
  const transition = new Float64Array(n * n);
  for (let row = 0; row < n; row++) for (let k = 0; k < n; k++) transition[row * n + k] = end[row * columns + k]!;
  const shifts: Float64Array[] = [];
  for (let column = n; column < columns; column++) {
    const residual = Float64Array.from({ length: n }, (_, row) => end[row * columns + column]!);
    shifts.push(solvePeriodic(n, transition, residual));
  }
  return shifts;
}
