/** Runs one circuit in the simulator and takes the figures that the engine is held against. */
import type { Element } from "@underchassis/calc";
import type { CircuitCase, DischargeAnalysis, SmallSignalAnalysis, SteadyAnalysis, TransientAnalysis } from "./case.ts";
import { differentiate } from "./differentiate.ts";
import { type ExportOptions, exportNetwork } from "./export-network.ts";
import type { NetlistWriter } from "./netlist-writer.ts";
import { readOhms } from "./ohmmeter-oracle.ts";
import { digestOf, type ElementRecord, type OracleRecord } from "./record.ts";
import { settle } from "./settle.ts";
import { simulate, simulateSweep, simulatorVersion, type Trace } from "./simulator.ts";
import { ampsOf, constantFigures, type Figures, figuresBetween, valueAt, voltsBetween } from "./trace-figures.ts";
import { GRID_LIMIT_VOLTS } from "./tube-lines.ts";

const STEPS_PER_PERIOD = 2000;
const WINDOW_PERIODS = 2;
/** Points that hardly leave zero are judged as if they were this large, in volts: a tenth of what the comparison can tell. */
const LEAST_SIZE_VOLTS = 0.1;

type Over = (values: Float64Array) => Figures;

/** Figures of all points and elements; `over` says how a vector becomes figures. */
function figuresOf(exported: NetlistWriter, trace: Trace, over: Over): Required<Pick<OracleRecord, "points" | "elements">> {
  const points: Record<string, Figures> = {};
  for (const [point, node] of exported.pointNodes) points[point] = over(voltsBetween(trace, node, "0"));
  const elements: Record<string, ElementRecord> = {};
  for (const [id, reading] of exported.readings) {
    const volts = voltsBetween(trace, ...reading.nodes);
    const amps = ampsOf(trace, reading.current);
    const power = (v: Float64Array, i: Float64Array): number => over(v.map((value, row) => value * (i[row] ?? 0))).mean;
    const currents = over(amps);
    if (reading.grid !== undefined && over(voltsBetween(trace, ...reading.grid)).max > GRID_LIMIT_VOLTS) {
      throw new Error(`${id}: the grid comes above ${GRID_LIMIT_VOLTS} V, where the simulated tube has no grid current`);
    }
    const record: ElementRecord = { volts: over(volts), amps: currents, watts: power(volts, amps) };
    if (reading.heatOhms !== undefined) record.watts = reading.heatOhms * currents.rms ** 2;
    for (const [name, electrode] of Object.entries(reading.electrodes ?? {})) {
      const flow = ampsOf(trace, electrode.current);
      record.watts += power(voltsBetween(trace, ...electrode.nodes), flow);
      record.electrodes = { ...record.electrodes, [name]: over(flow).mean };
    }
    elements[id] = record;
  }
  return { points, elements };
}

/** A regulator tube assumed lit must carry its least current; a dark one must see less than its striking voltage. */
function checkRegulators(elements: readonly Element[], found: Record<string, ElementRecord>, options: ExportOptions): void {
  for (const element of elements) {
    if (element.kind !== "gas-regulator") continue;
    const figures = found[element.id];
    if (figures === undefined) throw new Error(`${element.id} was not measured`);
    const agrees = options.lit?.[element.id] ? figures.amps.min > element.extinguishAmps : figures.volts.max < element.strikeVolts;
    if (!agrees) throw new Error(`${element.id} is not in the state assumed: ${figures.volts.max} V, ${figures.amps.min} A`);
  }
}

async function steady(circuit: CircuitCase, analysis: SteadyAnalysis, options: ExportOptions): Promise<Partial<OracleRecord>> {
  const { hertz, settlePeriods = 24, fromOperatingPoint = false } = analysis;
  const settled = fromOperatingPoint
    ? { runs: 0, drift: 0, initial: new Map() }
    : await settle(circuit.network, options, hertz, settlePeriods);
  const exported = exportNetwork(circuit.network, { ...options, initial: settled.initial });
  const width = WINDOW_PERIODS / hertz;
  const stop = fromOperatingPoint ? settlePeriods / hertz : 2 * width + 1 / hertz;
  const step = 1 / hertz / STEPS_PER_PERIOD / (fromOperatingPoint ? 0.5 : 1);
  const start = stop - 2 * width - 0.5 / hertz;
  const trace = await simulate(exported.lines, exported.saved, `.tran ${step} ${stop} ${start} ${step}${fromOperatingPoint ? "" : " uic"}`);
  const times = voltsOfTime(trace);
  const last = figuresOf(exported, trace, (values) => figuresBetween(times, values, stop - width, stop));
  const before = figuresOf(exported, trace, (values) => figuresBetween(times, values, stop - 2 * width, stop - width));
  const changes = Object.entries(last.points).map(([point, figures]) => {
    const size = Math.max(LEAST_SIZE_VOLTS, Math.abs(figures.max), Math.abs(figures.min));
    return { point, share: Math.abs(figures.mean - (before.points[point]?.mean ?? 0)) / size };
  });
  const worst = changes.reduce((a, b) => (b.share > a.share ? b : a), { point: "", share: 0 });
  if (worst.share > 1e-4) throw new Error(`${circuit.name}: the last two windows differ by ${worst.share} of its size at ${worst.point}`);
  const windows = worst.share;
  return { ...last, settling: { runs: settled.runs, drift: settled.drift, windows } };
}

function voltsOfTime(trace: Trace): Float64Array {
  const times = trace.get("time");
  if (times === undefined) throw new Error("the simulator gave no time");
  return times;
}

async function overTime(circuit: CircuitCase, analysis: TransientAnalysis | DischargeAnalysis, options: ExportOptions) {
  const initial = new Map(Object.entries(analysis.initialVolts ?? {}));
  const exported = exportNetwork(circuit.network, { ...options, initial });
  const { durationSeconds: stop, maxStepSeconds: step } = analysis;
  const trace = await simulate(exported.lines, exported.saved, `.tran ${step} ${stop} 0 ${step} uic`);
  return { exported, trace, times: voltsOfTime(trace) };
}

async function transient(circuit: CircuitCase, analysis: TransientAnalysis, options: ExportOptions): Promise<Partial<OracleRecord>> {
  const { exported, trace, times } = await overTime(circuit, analysis, options);
  const stop = analysis.durationSeconds;
  const figures = figuresOf(exported, trace, (values) => figuresBetween(times, values, times[1] ?? 0, stop));
  const samples: Record<string, number[]> = {};
  for (const [point, node] of exported.pointNodes) {
    const volts = voltsBetween(trace, node, "0");
    samples[point] = analysis.sampleSeconds.map((seconds) => valueAt(times, volts, seconds));
  }
  const squares = Object.entries(figures.elements).map(([id, element]) => [id, element.amps.rms ** 2 * stop] as const);
  return { ...figures, samples, ampsSquaredSeconds: Object.fromEntries(squares) };
}

async function discharge(circuit: CircuitCase, analysis: DischargeAnalysis, options: ExportOptions): Promise<Partial<OracleRecord>> {
  const { exported, trace, times } = await overTime(circuit, analysis, options);
  const seconds: Record<string, number> = {};
  for (const point of analysis.points) {
    const volts = voltsBetween(trace, exported.node(point), "0").map(Math.abs);
    const above = volts.findLastIndex((value) => value > analysis.toVolts);
    if (above < 0 || above + 1 >= volts.length) throw new Error(`${circuit.name}: ${point} does not cross ${analysis.toVolts} V`);
    const [t0, t1, v0, v1] = [times[above] ?? 0, times[above + 1] ?? 0, volts[above] ?? 0, volts[above + 1] ?? 0];
    seconds[point] = t0 + ((t1 - t0) * (v0 - analysis.toVolts)) / (v0 - v1);
  }
  return { seconds };
}

async function smallSignal(circuit: CircuitCase, analysis: SmallSignalAnalysis, options: ExportOptions): Promise<Partial<OracleRecord>> {
  const exported = exportNetwork(circuit.network, { ...options, input: analysis.input });
  const gains: Record<string, [number, number][]> = Object.fromEntries(analysis.outputs.map((point) => [point, []]));
  for (const hertz of analysis.hertz) {
    const trace = await simulateSweep(exported.lines, exported.saved, `.ac lin 1 ${hertz} ${hertz}`);
    for (const point of analysis.outputs) {
      const gain = trace.get(`v(${exported.node(point)})`)?.[0];
      if (gain === undefined) throw new Error(`no gain at ${point}`);
      gains[point]?.push([gain.re, gain.im]);
    }
  }
  return { gains };
}

function dispatch(circuit: CircuitCase, options: ExportOptions): Promise<Partial<OracleRecord>> {
  const { analysis } = circuit;
  switch (analysis.kind) {
    case "steady":
      return steady(circuit, analysis, options);
    case "transient":
      return transient(circuit, analysis, options);
    case "discharge":
      return discharge(circuit, analysis, options);
    case "small-signal":
      return smallSignal(circuit, analysis, options);
    case "sensitivity":
      return differentiate(circuit, analysis, measure).then((sensitivities) => ({ sensitivities }));
    case "ohmmeter":
      return readOhms(circuit.network, analysis).then((ohms) => ({ ohms }));
    case "dc": {
      const exported = exportNetwork(circuit.network, options);
      return simulate(exported.lines, exported.saved, ".op").then((trace) =>
        figuresOf(exported, trace, (values) => constantFigures(values[0] ?? Number.NaN)),
      );
    }
  }
}

/** Options of a circuit's export, the same for measuring and for the digest. */
function exportOptionsOf(circuit: CircuitCase): ExportOptions {
  return circuit.lit === undefined ? {} : { lit: circuit.lit };
}

/** Digest of what would be simulated now. */
export function currentDigest(circuit: CircuitCase): string {
  return digestOf(exportNetwork(circuit.network, exportOptionsOf(circuit)).lines, circuit.analysis);
}

/** Simulates one circuit. Takes 0.1 to some tens of seconds. */
export async function measure(circuit: CircuitCase): Promise<OracleRecord> {
  const options = exportOptionsOf(circuit);
  const figures = await dispatch(circuit, options);
  if (figures.elements !== undefined) checkRegulators(circuit.network.elements, figures.elements, options);
  return { simulator: await simulatorVersion(), netlist: currentDigest(circuit), ...figures };
}
