import { type Disturbance, type Injection, injectionOf, type PointAmpere } from "./injection.ts";
import { LinearPass, type Sums } from "./linear-pass.ts";
import type { Network, Thermistor } from "./network.ts";
import { PeriodicFactors } from "./periodic-factors.ts";
import { directShare } from "./probe-direct.ts";
import { type Functional, probeFunctional, probeGain, probeWave } from "./probe-reading.ts";
import { filamentOhms, thermistorSlope } from "./self-heating.ts";
import { factorizeSmall, solveSmall } from "./small-lu.ts";
import { CircuitError, type ParameterRef, type Probe, type Sensitivities, type SteadyState } from "./solution.ts";
import { solveSteady } from "./steady.ts";
import { SteadySolution } from "./steady-solution.ts";
import { waveFigures } from "./wave-figures.ts";
import type { Waves } from "./waves.ts";

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
  return { probes, parameters, ...changesOf(solution, probes, parameters) };
}

/**
 * Mean volts at every point for one ampere of direct current into every other, about a steady state.
 *
 * @returns ohms, row-major: [read at][put into]
 * @throws CircuitError `unknown-point`; `bad-value` for a steady state that `solveSteady` has not made
 */
export function transferOhms(points: readonly string[], reference: string, steady: SteadyState): Float64Array {
  if (!(steady instanceof SteadySolution)) throw new CircuitError("bad-value", "transfer resistances need a state of solveSteady", [], []);
  const probes = points.map((point): Probe => ({ quantity: "dc-volts", from: point, to: reference }));
  return changesOf(
    steady,
    probes,
    points.map((into) => ({ into })),
  ).matrix;
}

function changesOf(
  solution: SteadySolution,
  probes: readonly Probe[],
  parameters: readonly (ParameterRef | PointAmpere)[],
): Pick<Sensitivities, "values" | "matrix"> {
  const { waves } = solution;
  const { circuit } = solution.internals;
  const { trajectory } = waves;
  const hot = [...circuit.conditions.ohms.keys()];
  const hotProbes = hot.map((id): Probe => ({ quantity: "rms-amps", element: id }));
  const references: Disturbance[] = [...parameters, ...hot.map((id) => ({ hotOhms: id }))];
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
  return { values: Float64Array.from(probes, (probe) => solution.read(probe)), matrix };
}

/** Shift of the stores at the start of the period for each parameter: (I - M)^-1 of what the period adds. */
function initialShifts(n: number, columns: number, end: Float64Array): Float64Array[] {
  const transition = new Float64Array(n * n);
  for (let row = 0; row < n; row++) for (let k = 0; k < n; k++) transition[row * n + k] = end[row * columns + k]!;
  const factors = new PeriodicFactors(n, transition);
  const shifts: Float64Array[] = [];
  for (let column = n; column < columns; column++) {
    const residual = Float64Array.from({ length: n }, (_, row) => end[row * columns + column]!);
    shifts.push(factors.solve(residual));
  }
  return shifts;
}
