import {
  type ChangedSolver,
  CircuitError,
  changedSolver,
  ohmmeterSlopes,
  type Probe,
  type Sensitivities,
  type SteadyState,
  sensitivities,
  solveSteady,
} from "@underchassis/calc";
import { compile } from "../compile/compile.ts";
import type { ChassisModel, CompiledNetwork, Condition, Prediction, ReadingQuantity, Situation, Solved } from "../model/index.ts";
import type { ChassisData } from "../resolve/resolveJob.ts";
import { predictOhms } from "./predictOhms.ts";
import { SharedElements } from "./sharedElements.ts";
import { spreadOf } from "./spread.ts";

/** Resistance of the test voltmeters that show how stiff a point is; far above anything in a set. */
const TEST_OHMS = 1e12;
/**
 * Steps a period, and the correction at which a steady state counts as found: a few millivolts in some hundred volts. Against the
 * independent simulator (tests/jobs) that keeps means within 0.5 % and ripple within 5 %, at half the time of the engine's own default.
 */
const FINE = { stepsPerPeriod: 96, tolerance: 2e-5 };
/** The slopes of ripple hang on where the peaks lie, and need the engine's own default. */
const RIPPLE_SLOPES = { tolerance: 2e-5 };
/** Steps a period and correction that are enough to compare two chassis that differ in one part. */
const COARSE = { stepsPerPeriod: 64, tolerance: 1e-4 };
/** A meter that pulls a reading down by more than this share is simulated as a part; below it the linear correction is exact enough. */
const REAL_METER_SHARE = 0.03;

interface Analysed {
  compiled: CompiledNetwork;
  steady: SteadyState;
  sensitivities: Sensitivities;
  rowOf: ReadonlyMap<string, number>;
}

/** Simulates a chassis on demand and keeps what it has solved. */
class Simulator {
  readonly #data: ChassisData;
  readonly #compiled = new Map<string, CompiledNetwork>();
  readonly #solved = new Map<string, Solved>();
  readonly #byNetwork = new Map<string, Solved>();
  readonly #analysed = new Map<string, Analysed | undefined>();
  readonly #lastSteady = new Map<string, SteadyState>();
  readonly #families = new Map<string, ChangedSolver | undefined>();
  readonly #shared = new SharedElements();

  constructor(data: ChassisData) {
    this.#data = data;
  }

  condition(id: string): Condition {
    const condition = this.#data.conditions.get(id);
    if (condition === undefined) throw new Error(`no condition "${id}"`);
    return condition;
  }

  lineVolts(situation: Situation): number {
    const { line } = this.#data;
    if (typeof situation.line === "number") return situation.line;
    switch (situation.line) {
      case "design":
        return line.designVolts;
      case "low":
        return line.lowVolts;
      case "high":
        return line.highVolts;
      case "actual":
        return this.condition(situation.condition).lineVolts ?? line.actualVolts;
    }
  }

  compile(situation: Situation): CompiledNetwork {
    const volts = this.lineVolts(situation);
    const { coarse: _, ...exact } = situation;
    const key = keyOf(exact, volts);
    const known = this.#compiled.get(key);
    if (known !== undefined) return known;
    const own = compile(this.#data, situation.life, this.condition(situation.condition), volts, situation);
    const compiled = { ...own, network: this.#shared.share(own.network) };
    this.#compiled.set(key, compiled);
    return compiled;
  }

  solve(situation: Situation): Solved {
    const key = keyOf(situation, this.lineVolts(situation));
    const known = this.#solved.get(key);
    if (known !== undefined) return known;
    const compiled = this.compile(situation);
    // Lives that do not differ in this condition share one solution.
    const text = `${situation.coarse === true} ${this.#shared.fingerprint(compiled.network)}`;
    const twin = this.#byNetwork.get(text);
    const solved = twin ?? this.#solveNetwork(compiled, situation);
    this.#byNetwork.set(text, solved);
    this.#solved.set(key, solved);
    return solved;
  }

  predict(
    situation: Situation,
    probe: { quantity: ReadingQuantity; at: string; to: string },
    meter?: { ohms: number; accuracy: number },
  ): Prediction | undefined {
    const accuracy = meter?.accuracy ?? 0;
    if (probe.quantity === "ohms") {
      try {
        return predictOhms(this.compile(situation), probe.at, probe.to, accuracy, ohmmeterSlopes);
      } catch (error) {
        if (error instanceof CircuitError) return undefined;
        throw error;
      }
    }
    const analysed = this.#analyse(situation);
    if (analysed === undefined) return undefined;
    const row = this.#row(analysed, probe);
    if (row === undefined) return undefined;
    const spread = spreadOf(analysed.compiled.uncertain, row.slopes);
    const loaded =
      meter === undefined || !probe.quantity.endsWith("volts") ? row.value : this.#withMeter(situation, probe, meter.ohms, row);
    const scale = row.value === 0 ? 1 : loaded / row.value;
    const sigma = Math.hypot(spread.sigma * Math.abs(scale), accuracy * Math.abs(loaded));
    const centre = loaded + spread.shift * scale;
    return {
      nominal: loaded,
      low: centre - 2 * sigma,
      high: centre + 2 * sigma,
      sigma,
      worstLow: loaded - spread.worstDown * Math.abs(scale) - accuracy * Math.abs(loaded),
      worstHigh: loaded + spread.worstUp * Math.abs(scale) + accuracy * Math.abs(loaded),
      contributors: spread.contributors,
    };
  }

  sensitivities(situation: Situation): Sensitivities | undefined {
    return this.#analyse(situation)?.sensitivities;
  }

  #solveNetwork(compiled: CompiledNetwork, situation: Situation): Solved {
    const topology = `${situation.coarse === true} ${compiled.network.elements.map((element) => element.id).join("|")}`;
    const warmStart = this.#lastSteady.get(topology);
    try {
      const options = { hertz: this.#data.line.hertz, ...(situation.coarse === true ? COARSE : FINE) };
      const compared = situation.coarse === true && situation.life !== "designed" && situation.meter === undefined;
      const steady =
        (compared ? this.#compare(compiled, situation) : undefined) ??
        solveSteady(compiled.network, { ...options, ...(warmStart === undefined ? {} : { warmStart }) });
      this.#lastSteady.set(topology, steady);
      return { ok: true, compiled, steady };
    } catch (error) {
      if (!(error instanceof CircuitError)) throw error;
      const parts = [
        ...new Set(error.elements.map((id) => (compiled.origins.get(id) ?? compiled.origins.get(withoutWinding(id)))?.part ?? id)),
      ];
      return {
        ok: false,
        code: error.code,
        message: `${error.message} (${situation.life}, ${situation.condition})`,
        points: error.points,
        parts,
      };
    }
  }

  /** A chassis as it stands, or with one part as it was, from one family of solutions: both have the same error of their steps. */
  #compare(compiled: CompiledNetwork, { revert, ...standing }: Situation): SteadyState | undefined {
    const key = keyOf(standing, this.lineVolts(standing));
    if (!this.#families.has(key)) {
      const { coarse: _, ...exact } = standing;
      const known = this.#solved.get(keyOf(exact, this.lineVolts(exact)));
      const { stepsPerPeriod } = COARSE;
      const options = { stepsPerPeriod, hertz: this.#data.line.hertz, ...(known?.ok === true ? { warmStart: known.steady } : {}) };
      this.#families.set(key, changedSolver(this.compile(standing).network, options));
    }
    const family = this.#families.get(key);
    return revert === undefined ? family?.base : family?.solve(compiled.network);
  }

  /** The steady state with one row of sensitivities for every point and every reading taken in this situation. */
  #analyse(situation: Situation): Analysed | undefined {
    const volts = this.lineVolts(situation);
    const key = keyOf({ ...situation, line: volts }, volts);
    if (this.#analysed.has(key)) return this.#analysed.get(key);
    const solved = this.solve(situation);
    const analysed = solved.ok ? this.#differentiate(situation, solved) : undefined;
    this.#analysed.set(key, analysed);
    return analysed;
  }

  #differentiate(situation: Situation, solved: Extract<Solved, { ok: true }>): Analysed | undefined {
    const { compiled } = solved;
    const probes: Probe[] = [];
    const rowOf = new Map<string, number>();
    const add = (probe: Probe) => {
      const name = probeKey(probe);
      if (!rowOf.has(name)) rowOf.set(name, probes.push(probe) - 1);
    };
    for (const point of solved.steady.points.keys()) add({ quantity: "dc-volts", from: point, to: compiled.network.reference });
    const tests = new Map<string, { from: string; to: string }>();
    for (const reading of this.#data.readings) {
      if (reading.life !== situation.life || reading.condition !== situation.condition || reading.quantity === "ohms") continue;
      const probe = this.#probe(compiled, reading);
      if (probe === undefined) continue;
      add(probe);
      if ("from" in probe) tests.set(testId(probe.from, probe.to), { from: probe.from, to: probe.to });
    }
    const network = {
      ...compiled.network,
      elements: [
        ...compiled.network.elements,
        ...[...tests].map(([id, { from, to }]) => ({ kind: "voltmeter" as const, id, nodes: [from, to] as const, ohms: TEST_OHMS })),
      ],
    };
    const parameters = [
      ...compiled.uncertain.map(({ ref }) => ref),
      ...[...tests.keys()].map((element) => ({ element, parameter: "ohms" })),
    ];
    try {
      // Slopes need fewer steps than values do; those of ripple hang on where the peaks lie, and need them all.
      const effort = probes.some(({ quantity }) => quantity === "ripple-volts") ? RIPPLE_SLOPES : COARSE;
      const differentiated = solveSteady(network, { ...effort, hertz: this.#data.line.hertz, warmStart: solved.steady });
      const { matrix } = sensitivities(network, probes, parameters, differentiated);
      const values = Float64Array.from(probes, (probe) => solved.steady.read(probe));
      return { compiled, steady: solved.steady, sensitivities: { probes, parameters, values, matrix }, rowOf };
    } catch (error) {
      if (error instanceof CircuitError) return undefined;
      throw error;
    }
  }

  #probe(compiled: CompiledNetwork, probe: { quantity: ReadingQuantity; at: string; to: string }): Probe | undefined {
    switch (probe.quantity) {
      case "dc-amps":
      case "ac-amps": {
        const element = elementsOf(compiled, probe.at)[0];
        return element === undefined ? undefined : { quantity: probe.quantity === "dc-amps" ? "dc-amps" : "rms-amps", element };
      }
      case "ohms":
        return undefined;
      default: {
        const [from, to] = [compiled.pointOf(probe.at), compiled.pointOf(probe.to)];
        return from === undefined || to === undefined ? undefined : { quantity: probe.quantity, from, to };
      }
    }
  }

  /** Value and slopes of a probe; DC voltages between any two points are differences of the points' rows. */
  #row(
    analysed: Analysed,
    wanted: { quantity: ReadingQuantity; at: string; to: string },
  ): { value: number; slopes: Float64Array; stiffness: number | undefined } | undefined {
    const probe = this.#probe(analysed.compiled, wanted);
    if (probe === undefined) return undefined;
    const count = analysed.compiled.uncertain.length;
    const { matrix, values, parameters } = analysed.sensitivities;
    const width = parameters.length;
    const row = (index: number) => ({ value: values[index] ?? 0, slopes: matrix.subarray(index * width, (index + 1) * width) });
    const own = analysed.rowOf.get(probeKey(probe));
    if (own !== undefined) {
      const { value, slopes } = row(own);
      const test = "from" in probe ? parameters.findIndex(({ element }) => element === testId(probe.from, probe.to)) : -1;
      return {
        value,
        slopes: slopes.subarray(0, count),
        stiffness: test < 0 ? undefined : value === 0 ? 0 : ((slopes[test] ?? 0) / value) * TEST_OHMS,
      };
    }
    if (probe.quantity !== "dc-volts") {
      const steady = analysed.steady;
      return { value: steady.read(probe), slopes: new Float64Array(count), stiffness: undefined };
    }
    const reference = analysed.compiled.network.reference;
    const from = analysed.rowOf.get(probeKey({ ...probe, to: reference }));
    const to = analysed.rowOf.get(probeKey({ ...probe, from: probe.to, to: reference }));
    const zero = { value: 0, slopes: new Float64Array(width) };
    const a = from === undefined ? zero : row(from);
    const b = to === undefined ? zero : row(to);
    return {
      value: a.value - b.value,
      slopes: a.slopes.map((slope, index) => slope - (b.slopes[index] ?? 0)).subarray(0, count),
      stiffness: undefined,
    };
  }

  /**
   * What a meter of this resistance shows: the linear correction where the point's stiffness is known and the meter hardly loads it,
   * else a simulation with the meter in.
   */
  #withMeter(
    situation: Situation,
    probe: { quantity: ReadingQuantity; at: string; to: string },
    ohms: number,
    row: { value: number; stiffness: number | undefined },
  ): number {
    const linear = row.stiffness === undefined ? undefined : row.value / (1 + Math.max(0, row.stiffness) / ohms);
    if (linear !== undefined && Math.abs(linear - row.value) <= REAL_METER_SHARE * Math.abs(row.value)) return linear;
    const solved = this.solve({ ...situation, meter: { from: probe.at, to: probe.to, ohms } });
    const loaded = solved.ok ? this.#probe(solved.compiled, probe) : undefined;
    return solved.ok && loaded !== undefined ? solved.steady.read(loaded) : (linear ?? row.value);
  }
}

/** Ids of the elements that stand for a part, its own before its heater. */
function elementsOf(compiled: CompiledNetwork, part: string): readonly string[] {
  const ids: string[] = [];
  for (const [id, origin] of compiled.origins) if (origin.part === part && origin.aspect !== "heater") ids.push(id);
  return ids;
}

/** The model that checks look at: the data with its simulations. */
export function chassisModel(data: ChassisData): ChassisModel {
  const simulator = new Simulator(data);
  return {
    ...data,
    compile: (situation) => simulator.compile(situation),
    solve: (situation) => simulator.solve(situation),
    predict: (situation, probe, meter) => simulator.predict(situation, probe, meter),
    sensitivities: (situation) => simulator.sensitivities(situation),
    elementsOf,
  };
}

/** The engine calls a winding by its transformer's element and its own name: T1.primary. */
function withoutWinding(id: string): string {
  const dot = id.lastIndexOf(".");
  return dot < 0 ? id : id.slice(0, dot);
}

function keyOf(situation: Situation, volts: number): string {
  const { meter } = situation;
  return [
    situation.life,
    situation.condition,
    volts,
    situation.revert ?? "",
    situation.coarse === true,
    meter === undefined ? "" : `${meter.from}|${meter.to}|${meter.ohms}`,
  ].join("\u0000");
}

function probeKey(probe: Probe): string {
  return "from" in probe ? `${probe.quantity}\u0000${probe.from}\u0000${probe.to}` : `${probe.quantity}\u0000${probe.element}`;
}

function testId(from: string, to: string): string {
  return `test ${from} ${to}`;
}
