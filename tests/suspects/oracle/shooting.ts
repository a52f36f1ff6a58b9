/**
 * Periodic steady state in the simulator, by Newton's method on the capacitor volts and coil amps at the start of a run. How the end of a
 * run hangs on its start is measured in the simulator once a chassis and mended by Broyden's rule (Math. Comp. 19, 1965) from
 * there; so a network that would need minutes of its own time to settle takes a few runs. A state counts as found when the Newton step,
 * which is the distance that is left, is below TOLERANCE of its size, however slowly the network moves.
 */
import type { Network } from "@underchassis/calc";
import { exportNetwork } from "../../engine/oracle/export-network.ts";
import type { NetlistWriter } from "../../engine/oracle/netlist-writer.ts";
import type { Trace } from "../../engine/oracle/simulator.ts";
import { rowsOf } from "../../engine/oracle/trace-figures.ts";
import { firstGuess } from "./firstGuess.ts";
import { solveDense } from "./matrix.ts";
import { runPeriods } from "./quickRun.ts";

const TOLERANCE = 4e-4;
const PERIODS = 1;
const MOST_RUNS = 14;
/** Runs without correction that a network gets to find its own way before its slopes are measured anew. */
const FREE_PERIODS = 20;
/** How often slopes are measured anew: for a network like one that is known, and for the first of its kind. */
const ROUNDS = 2;
const FIRST_ROUNDS = 4;
/** A careful search's own run, and how little it may change the state in the end. */
const LONG_PERIODS = 60;
const STAYS = 2e-3;
const LEAST_VOLTS = 1;
const LEAST_AMPS = 1e-3;
/** Longest step of one correction, in sizes of the state. */
const LONGEST = 0.6;

/** Where a network was found, to start a similar one from. */
export interface Start {
  values: ReadonlyMap<string, number>;
  /** Volts of the points, from which the simulator looks for its first instant. */
  points?: ReadonlyMap<string, number>;
  /** d(end)/d(start), in units of the states' sizes; by the names of the states. */
  slopes?: { names: readonly string[]; matrix: readonly Float64Array[] };
}

export interface Settled {
  exported: NetlistWriter;
  /** The last period. */
  trace: Trace;
  start: Start;
  runs: number;
  /** Estimated distance from the steady state, in sizes of a state. */
  distance: number;
}

interface Run {
  exported: NetlistWriter;
  trace: Trace;
  end: Float64Array;
}

const NOT_SETTLED = "not settled";

export class Shooting {
  private readonly network: Network;
  private readonly hertz: number;
  private readonly lit: Readonly<Record<string, boolean>>;
  private readonly names: readonly string[];
  private readonly least: Float64Array;
  private points: ReadonlyMap<string, number> = new Map();
  runs = 0;

  constructor(network: Network, hertz: number, lit: Readonly<Record<string, boolean>>) {
    this.network = network;
    this.hertz = hertz;
    this.lit = lit;
    const { states } = exportNetwork(network, { lit });
    this.names = states.map(({ name }) => name);
    this.least = Float64Array.from(states, (state) => (state.minus === undefined ? LEAST_AMPS : LEAST_VOLTS));
  }

  private async run(start: Float64Array, periods = PERIODS): Promise<Run> {
    this.runs += 1;
    const initial = new Map(this.names.map((name, i) => [name, start[i] ?? 0]));
    const exported = exportNetwork(this.network, { lit: this.lit, initial });
    const lines = [...exported.lines, firstGuess(exported, this.points)];
    const trace = await runPeriods(lines, exported.saved, this.hertz, periods);
    const last = rowsOf(trace) - 1;
    const read = (vector: string | undefined): number =>
      vector === undefined || vector === "v(0)" ? 0 : (trace.get(vector)?.[last] ?? Number.NaN);
    const end = Float64Array.from(exported.states, ({ plus, minus }) => read(plus) - read(minus));
    if (end.some((value) => !Number.isFinite(value))) throw new Error("the simulator lost a state");
    return { exported, trace, end };
  }

  private size(values: Float64Array): Float64Array {
    return values.map((value, i) => Math.max(Math.abs(value), this.least[i] ?? 1));
  }

  /** Measures d(end)/d(start) by differences. */
  private async slopesAt(start: Float64Array, end: Float64Array, size: Float64Array): Promise<Float64Array[]> {
    const n = start.length;
    const matrix = start.reduce<Float64Array[]>((rows) => [...rows, new Float64Array(n)], []);
    for (let j = 0; j < n; j += 1) {
      const moved = Float64Array.from(start);
      const step = 0.01 * (size[j] ?? 1);
      moved[j] = (moved[j] ?? 0) + step;
      const other = await this.run(moved);
      for (let i = 0; i < n; i += 1) {
        const slope = (((other.end[i] ?? 0) - (end[i] ?? 0)) / step) * ((size[j] ?? 1) / (size[i] ?? 1));
        (matrix[i] as Float64Array)[j] = slope;
      }
    }
    return matrix;
  }

  private borrowed(start: Start): Float64Array[] | undefined {
    const { slopes } = start;
    if (slopes === undefined) return undefined;
    return this.names.map((row) => {
      const i = slopes.names.indexOf(row);
      return Float64Array.from(this.names, (column) => {
        const j = slopes.names.indexOf(column);
        return i < 0 || j < 0 ? 0 : (slopes.matrix[i]?.[j] ?? 0);
      });
    });
  }

  /**
   * @param careful lets the network run for itself first, measures the slopes here, and holds the end against another long run
   * @throws Error when the network does not come to rest
   */
  async settle(from: Start, careful = false): Promise<Settled> {
    let x: Float64Array = Float64Array.from(this.names, (name) => from.values.get(name) ?? 0);
    this.points = from.points ?? new Map();
    let slopes = careful ? undefined : this.borrowed(from);
    const rounds = from.slopes === undefined ? FIRST_ROUNDS : ROUNDS;
    for (let round = 0; round < rounds; round += 1) {
      if (slopes === undefined || round > 0) {
        x = (await this.run(x, careful ? LONG_PERIODS : FREE_PERIODS)).end;
        const { end } = await this.run(x);
        slopes = await this.slopesAt(x, end, this.size(x));
      }
      const found = await this.newton(x, slopes, this.size(x));
      if (found.settled !== undefined && (!careful || (await this.stays(found.settled)))) return found.settled;
      x = found.x;
    }
    throw new Error(NOT_SETTLED);
  }

  /** Whether a long run leaves the state where it is. */
  private async stays({ start }: Settled): Promise<boolean> {
    const x = Float64Array.from(this.names, (name) => start.values.get(name) ?? 0);
    const { end } = await this.run(x, LONG_PERIODS);
    const size = this.size(x);
    return end.every((value, i) => Math.abs(value - (x[i] ?? 0)) < STAYS * (size[i] ?? 1));
  }

  private async newton(start: Float64Array, slopes: Float64Array[], size: Float64Array): Promise<{ settled?: Settled; x: Float64Array }> {
    const n = start.length;
    let x = start;
    let before: { x: Float64Array; end: Float64Array } | undefined;
    let polished = false;
    let best = { x, rest: Number.POSITIVE_INFINITY };
    for (let k = 0; k < MOST_RUNS; k += 1) {
      const { exported, trace, end } = await this.run(x);
      if (before !== undefined) mend(slopes, before, { x, end }, size);
      const residual = Float64Array.from(end, (value, i) => (value - (x[i] ?? 0)) / (size[i] ?? 1));
      const rest = Math.max(...residual.map(Math.abs));
      if (rest < best.rest) best = { x: end, rest };
      const lhs = slopes.map((row, i) => row.map((value, j) => (i === j ? 1 : 0) - value));
      const step = solveDense(
        lhs,
        Array.from(residual, (value) => Float64Array.of(value)),
      ).map((row) => row[0] ?? 0);
      const distance = Math.max(0, ...step.map(Math.abs));
      if (distance < TOLERANCE && !polished) {
        // One step more: what is left is of second order, and a coupling capacitor's hundred volts no longer hide a grid's millivolts.
        polished = true;
      } else if (distance < 2 * TOLERANCE && polished) {
        const values = new Map(this.names.map((name, i) => [name, (x[i] ?? 0) + (step[i] ?? 0) * (size[i] ?? 1)]));
        const last = rowsOf(trace) - 1;
        const points = new Map([...exported.pointNodes].map(([point, node]) => [point, trace.get(`v(${node})`)?.[last] ?? 0]));
        const start: Start = { values, points, slopes: { names: this.names, matrix: slopes.map((row) => Float64Array.from(row)) } };
        return { settled: { exported, trace, start, runs: this.runs, distance }, x };
      }
      const share = Math.min(1, LONGEST / distance);
      before = { x, end };
      x = Float64Array.from({ length: n }, (_, i) => (before?.x[i] ?? 0) + share * (step[i] ?? 0) * (size[i] ?? 1));
    }
    return { x: best.x };
  }
}

/** Broyden's rule: the smallest change of the slopes that explains the last step. */
function mend(
  slopes: Float64Array[],
  before: { x: Float64Array; end: Float64Array },
  now: { x: Float64Array; end: Float64Array },
  size: Float64Array,
): void {
  const dx = Float64Array.from(now.x, (value, i) => (value - (before.x[i] ?? 0)) / (size[i] ?? 1));
  const norm = dx.reduce((sum, value) => sum + value * value, 0);
  if (norm < 1e-12) return;
  for (const [i, row] of slopes.entries()) {
    const dEnd = ((now.end[i] ?? 0) - (before.end[i] ?? 0)) / (size[i] ?? 1);
    const expected = row.reduce((sum, value, j) => sum + value * (dx[j] ?? 0), 0);
    const share = (dEnd - expected) / norm;
    for (let j = 0; j < row.length; j += 1) row[j] = (row[j] ?? 0) + share * (dx[j] ?? 0);
  }
}
