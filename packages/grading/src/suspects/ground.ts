import {
  type Element,
  type Network,
  type ParameterRef,
  type Probe,
  type SteadyState,
  sensitivities,
  solveSteady,
} from "@underchassis/calc";
import type { ChassisModel, CompiledNetwork, Life, ReadingQuantity } from "../model/index.ts";
import { atRest, restingOf } from "./atRest.ts";
import { coldTransfer, ohmsOf, pointIndex, shareOf } from "./coldTransfer.ts";
import { type Observable, scaled, scaleSlope, situationKey } from "./observable.ts";

/** One condition and line voltage that something is read in: its network, and its steady state when it has power. */
export interface Situation {
  key: string;
  compiled: CompiledNetwork;
  network: Network;
  steady?: SteadyState;
  /** Which of the observables are read here. */
  indices: readonly number[];
}

/** What the healthy chassis should show, and how every reading hangs on every value that may be off. */
export interface Ground {
  observables: readonly Observable[];
  situations: readonly Situation[];
  /** Reading as the meter shows it, on its scale; NaN where it cannot be computed. */
  nominal: Float64Array;
  /** What the meter's own resistance makes of the reading, as a factor. */
  loading: Float64Array;
  /**
   * Further doubt of a reading, one standard deviation on its scale: what a volt of an ohmmeter shows of a capacitor's leakage, and what
   * unequal halves make of ripple.
   */
  soft: Float64Array;
  /** What a reading is on the average beside its nominal value, on its scale, beyond what slopes tell. */
  offsets: Float64Array;
  /**
   * Row-major [observable][parameter]: change of the scaled reading for one standard deviation of each value. `offset` is the middle of the
   * value's tolerance, in standard deviations from its nominal value: electrolytics are made too large rather than too small.
   */
  slopes: Float64Array;
  parameters: readonly { key: string; part: string; deviation: number; offset: number }[];
  /** Largest direct voltage of the chassis: what "small" is measured against. */
  volts: number;
}

/** Steps a period for slopes and first looks. */
const COARSE = { stepsPerPeriod: 48, tolerance: 3e-4, islands: "tie" } as const;
const FINE = { stepsPerPeriod: 96, tolerance: 2e-5, islands: "tie" } as const;
/** Resistance of test voltmeters that show how stiff a point is, in ohms; far above anything in a set. */
const TEST_OHMS = 1e12;

/**
 * Simulates the chassis in every situation that an observable needs.
 *
 * @param fault an edit of every network, for the ground that a suspect would stand on
 * @param wanted which observables are needed; all unless given
 * @throws CircuitError where a network has no solution
 */
export function lay(
  model: ChassisModel,
  life: Life,
  observables: readonly Observable[],
  { fault, wanted }: { fault?: (network: Network) => Network | undefined; wanted?: ReadonlySet<number> } = {},
): Ground {
  const situations = situationsOf(model, life, observables, fault, wanted);
  const keys = new Map<string, number>();
  const parameters: Ground["parameters"][number][] = [];
  for (const { compiled, key } of situations) {
    for (const { ref, minus, plus, part } of compiled.uncertain) {
      const name = parameterKey(ref, part === "line" ? key : "");
      if (keys.has(name)) continue;
      keys.set(name, parameters.length);
      parameters.push({ key: name, part, ...logSpread(minus, plus) });
    }
  }
  const width = parameters.length;
  const ground: Ground = {
    observables,
    situations,
    nominal: new Float64Array(observables.length).fill(Number.NaN),
    loading: new Float64Array(observables.length).fill(1),
    soft: new Float64Array(observables.length),
    offsets: new Float64Array(observables.length),
    slopes: new Float64Array(observables.length * width),
    parameters,
    volts: Math.max(
      1,
      ...situations.flatMap(({ steady }) =>
        steady === undefined ? [] : [...steady.points.values()].map(({ meanVolts }) => Math.abs(meanVolts)),
      ),
    ),
  };
  for (const situation of situations) {
    const columns = situation.compiled.uncertain.map(
      ({ ref, part }) => keys.get(parameterKey(ref, part === "line" ? situation.key : "")) ?? 0,
    );
    if (situation.steady === undefined) layOhms(ground, situation, columns, width);
    else layPowered(ground, situation, situation.steady, columns, width, model.line.hertz);
  }
  return ground;
}

/** What a value is called among the parameters; the line's has a value of its own in every situation. */
export const parameterKey = ({ element, parameter }: ParameterRef, situation: string): string => `${element}|${parameter}|${situation}`;

/**
 * Standard deviation of the logarithm of a factor that lies evenly between 1 - minus and 1 + plus, and its mean in standard deviations.
 */
export function logSpread(minus: number, plus: number): { deviation: number; offset: number } {
  const [low, high] = [Math.max(0.02, 1 - minus), 1 + plus];
  const width = high - low;
  const [a, b] = [Math.log(low), Math.log(high)];
  const mean = (high * b - low * a) / width - 1;
  const square = (high * (b * b - 2 * b + 2) - low * (a * a - 2 * a + 2)) / width;
  const deviation = Math.sqrt(Math.max(0, square - mean * mean));
  return deviation < 1e-9 ? { deviation: (minus + plus) / Math.sqrt(12), offset: 0 } : { deviation, offset: mean / deviation };
}

const MOST_STRETCH = 3;
/** Below this share of the chassis's voltage the spread of a reading does not follow the reading. */
const SMALL = 0.01;

/** Tolerances scale a reading: what is half as high spreads half as wide. As a factor on the healthy chassis's slopes. */
export function stretchOf(quantity: ReadingQuantity, value: number, healthy: number, volts: number): number {
  if (quantity === "ohms" || Math.abs(healthy) < SMALL * volts || Number.isNaN(value)) return 1;
  return Math.min(MOST_STRETCH, Math.abs(value / healthy));
}

function situationsOf(
  model: ChassisModel,
  life: Life,
  observables: readonly Observable[],
  fault: ((network: Network) => Network | undefined) | undefined,
  wanted: ReadonlySet<number> | undefined,
): Situation[] {
  const byKey = new Map<string, number[]>();
  for (const [index, observable] of observables.entries()) {
    if (wanted?.has(index) === false) continue;
    const key = situationKey(observable);
    byKey.set(key, [...(byKey.get(key) ?? []), index]);
  }
  return [...byKey].flatMap(([key, indices]): Situation[] => {
    const first = observables[indices[0] ?? 0];
    if (first === undefined) return [];
    const compiled = model.compile({ life, condition: first.condition, line: first.lineVolts ?? "actual" });
    const network = (fault === undefined ? undefined : fault(compiled.network)) ?? compiled.network;
    const powered = model.conditions.get(first.condition)?.powered === true;
    if (!powered) return [{ key, compiled, network: atRest(network), indices }];
    const steady = solveSteady(network, { ...FINE, hertz: model.line.hertz });
    return [{ key, compiled, network, steady, indices }];
  });
}

function layOhms(ground: Ground, { compiled, network, indices }: Situation, columns: readonly number[], width: number): void {
  const index = pointIndex(network);
  const transfer = coldTransfer(network, index);
  const leaking = compiled.network;
  const leakingIndex = pointIndex(leaking);
  const leakingTransfer = coldTransfer(leaking, leakingIndex);
  const resistances = restingOf(compiled, network);
  for (const k of indices) {
    const { at, to, quantity } = ground.observables[k]!;
    const [from, other] = [compiled.pointOf(at), compiled.pointOf(to)];
    if (from === undefined || other === undefined || quantity !== "ohms") continue;
    const ohms = ohmsOf(network, index, transfer, from, other);
    ground.nominal[k] = scaled(quantity, ohms);
    ground.soft[k] = Math.abs(ground.nominal[k]! - scaled(quantity, ohmsOf(leaking, leakingIndex, leakingTransfer, from, other)));
    const slope = scaleSlope(quantity, ohms);
    if (slope === 0) continue;
    for (const [j, resistance] of resistances.entries()) {
      if (resistance === undefined) continue;
      const column = columns[j] ?? 0;
      const share = shareOf(index, transfer, from, other, resistance.nodes) / resistance.ohms;
      // dR / d ln r = r (i / I)^2 (Cohn, Proc. IRE 38, 1950).
      ground.slopes[k * width + column] = resistance.ohms * share ** 2 * slope * (ground.parameters[column]?.deviation ?? 0);
    }
  }
}

function layPowered(
  ground: Ground,
  situation: Situation,
  steady: SteadyState,
  columns: readonly number[],
  width: number,
  hertz: number,
): void {
  const { compiled, network } = situation;
  const wanted = situation.indices.flatMap((index) => {
    const probe = probeOf(compiled, ground.observables[index]!);
    return probe === undefined ? [] : [{ index, probe }];
  });
  const meters: Element[] = wanted.flatMap(({ index, probe }) =>
    "from" in probe ? [{ kind: "voltmeter" as const, id: `test ${index}`, nodes: [probe.from, probe.to] as const, ohms: TEST_OHMS }] : [],
  );
  const present = new Set(network.elements.map(({ id }) => id));
  const known = compiled.uncertain.map(({ ref }, k) => ({ ref, column: columns[k] ?? 0 })).filter(({ ref }) => has(network, present, ref));
  const tested: Network = { ...network, elements: [...network.elements, ...meters] };
  const solved = solveSteady(tested, { ...COARSE, hertz, warmStart: steady });
  const parameters = [...known.map(({ ref }) => ref), ...meters.map(({ id }) => ({ element: id, parameter: "ohms" }))];
  const { matrix } = sensitivities(
    tested,
    wanted.map(({ probe }) => probe),
    parameters,
    solved,
  );
  const columnOfMeter = new Map(meters.map(({ id }, k) => [id, known.length + k]));
  for (const [row, { index, probe }] of wanted.entries()) {
    const observable = ground.observables[index]!;
    const value = steady.read(probe);
    const meter = columnOfMeter.get(`test ${index}`);
    const stiffness =
      meter === undefined || value === 0 ? 0 : Math.max(0, ((matrix[row * parameters.length + meter] ?? 0) / value) * TEST_OHMS);
    const loading = 1 / (1 + stiffness / observable.meterOhms);
    ground.loading[index] = loading;
    ground.nominal[index] = value * loading;
    for (const [k, { column }] of known.entries())
      ground.slopes[index * width + column] =
        (matrix[row * parameters.length + k] ?? 0) * loading * (ground.parameters[column]?.deviation ?? 0);
  }
}

/** Whether the parameter is still in a network that a fault has changed. */
function has(network: Network, present: ReadonlySet<string>, { element, parameter }: { element: string; parameter: string }): boolean {
  if (!present.has(element)) return false;
  const found = network.elements.find(({ id }) => id === element);
  if (found?.kind === "transformer") return found.windings.some(({ id }) => parameter.startsWith(`${id}.`));
  return found !== undefined && (parameter in found || (parameter === "emission" && (found.kind === "triode" || found.kind === "pentode")));
}

/** What the engine is asked for; undefined where nothing of the network is there. */
export function probeOf(compiled: CompiledNetwork, { quantity, at, to }: Observable): Probe | undefined {
  if (quantity === "ohms") return undefined;
  if (quantity === "dc-amps" || quantity === "ac-amps") {
    for (const [id, origin] of compiled.origins)
      if (origin.part === at && origin.aspect !== "heater")
        return { quantity: quantity === "dc-amps" ? "dc-amps" : "rms-amps", element: id };
    return undefined;
  }
  const [from, other] = [compiled.pointOf(at), compiled.pointOf(to)];
  return from === undefined || other === undefined ? undefined : { quantity, from, to: other };
}
