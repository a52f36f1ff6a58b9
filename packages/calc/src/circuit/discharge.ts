import { compileNetwork } from "./compile.ts";
import { Marcher } from "./march.ts";
import type { Capacitor, Element, Network } from "./network.ts";
import { CircuitError } from "./solution.ts";
import { floatingIslands } from "./topology.ts";
import { validateNetwork } from "./validate-network.ts";
import { Waves } from "./waves.ts";

export interface DischargeOptions {
  /** Voltage in volts that every point is to fall below, against the reference and either way. */
  toVolts: number;
  /** Points to watch; those of the capacitors when absent. */
  points?: readonly string[];
  /** Longest time followed, in seconds (a day unless given). */
  longestSeconds?: number;
}

export interface DischargeResult {
  /** Seconds until each point last was above the limit; 0 when it never was, Infinity when it still is at the end. */
  seconds: ReadonlyMap<string, number>;
  /** Energy in joules stored in the capacitors at the start. */
  joules: number;
  /** Course of the watched points. */
  times: Float64Array;
  volts: ReadonlyMap<string, Float64Array>;
}

const FIRST_STEP_SECONDS = 1e-6;
/** Each step is this share of the time gone by: every exponential is resolved while it falls, fast ones first. */
const STEP_SHARE = 0.02;
const LONGEST_SECONDS = 86_400;

/** What is left when the plug is out and the tubes have cooled: no sources, no loads, no emission. Gas tubes are dark. */
function unplugged(elements: readonly Element[]): Element[] {
  const gone = new Set<Element["kind"]>(["voltage-source", "current-source", "triode", "pentode", "vacuum-diode", "gas-diode"]);
  return elements
    .filter((element) => !gone.has(element.kind))
    .map((element) => (element.kind === "filament" ? { ...element, ratedOhms: element.coldOhms } : element));
}

/**
 * How stored charge drains after switching off. Sources are removed, tubes count as cold and gas tubes as dark, so that
 * only bleeders, leakage and wire drain: the longest time the circuit allows by itself. It says nothing of a capacitor
 * that recovers charge afterwards, and nothing of a bleeder that is open: measure before touching.
 *
 * @param initialVolts voltage of each charged capacitor by element
 * @throws CircuitError `bad-value`, `unknown-point`, `singular`
 */
export function discharge(network: Network, initialVolts: ReadonlyMap<string, number>, options: DischargeOptions): DischargeResult {
  validateNetwork(network);
  if (!(options.toVolts > 0)) throw new CircuitError("bad-value", "toVolts must be above zero");
  const quiet: Network = { reference: network.reference, elements: unplugged(network.elements) };
  const circuit = compileNetwork(
    quiet,
    { ohms: new Map(), lit: new Set() },
    floatingIslands(quiet).map((island) => island[0]!),
  );
  const marcher = new Marcher(circuit);
  const state = new Float64Array(marcher.states);
  let joules = 0;
  for (const [id, volts] of initialVolts) {
    const index = circuit.stateIndex.get(id);
    const element = circuit.elements.get(id);
    if (index === undefined || element?.kind !== "capacitor")
      throw new CircuitError("bad-value", `there is no capacitor ${id} to be charged`, [], [id]);
    state[index] = volts;
    joules += (element.farads * volts * volts) / 2;
  }
  const capacitors = [...circuit.elements.values()].filter((element): element is Capacitor => element.kind === "capacitor");
  const points =
    options.points ?? [...new Set(capacitors.flatMap((element) => element.nodes))].filter((point) => point !== network.reference);
  for (const point of points)
    if (!circuit.pointRows.has(point)) throw new CircuitError("unknown-point", `no element touches the point ${point}`, [point]);
  const watched = new Map(points.map((point): [string, number[]] => [point, []]));
  const times: number[] = [];
  const longest = options.longestSeconds ?? LONGEST_SECONDS;
  let seconds = 0;
  for (let settled = false; !settled && seconds < longest; ) {
    const step = Math.min(Math.max(FIRST_STEP_SECONDS, quantized(STEP_SHARE * seconds)), longest - seconds);
    const plan = { stepSeconds: [step], levels: new Uint8Array(1) };
    const trajectory = marcher.emptyTrajectory(plan);
    marcher.march(plan, state, seconds, undefined, trajectory);
    seconds += step;
    times.push(seconds);
    const waves = new Waves(circuit, [marcher.reduction(step)], trajectory, 2);
    settled = true;
    for (const [point, course] of watched) {
      const volts = waves.row(waves.pointRow(point))[1]!;
      course.push(volts);
      if (Math.abs(volts) > options.toVolts) settled = false;
    }
    for (const element of capacitors) if (Math.abs(state[circuit.stateIndex.get(element.id)!]!) > options.toVolts) settled = false;
  }
  const volts = new Map([...watched].map(([point, course]) => [point, Float64Array.from(course)]));
  const lasts = new Map([...watched].map(([point, course]) => [point, lastAbove(times, course, options.toVolts)]));
  return { seconds: lasts, joules, times: Float64Array.from(times), volts };
}

/** Steps are rounded down to powers of the fourth root of two, so that few different networks need factoring. */
function quantized(seconds: number): number {
  return seconds <= 0 ? 0 : 2 ** (Math.floor(4 * Math.log2(seconds)) / 4);
}

/** Time at which a course falls below a limit for the last time; between steps its logarithm is taken as straight. */
function lastAbove(times: readonly number[], course: readonly number[], limit: number): number {
  let last = course.length - 1;
  while (last >= 0 && Math.abs(course[last]!) <= limit) last--;
  if (last < 0) return 0;
  if (last === course.length - 1) return Number.POSITIVE_INFINITY;
  const before = Math.abs(course[last]!);
  const after = Math.max(Math.abs(course[last + 1]!), 1e-12);
  const share = Math.log(before / limit) / Math.log(before / after);
  return times[last]! + share * (times[last + 1]! - times[last]!);
}
