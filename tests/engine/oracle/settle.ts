/**
 * Brings a driven circuit to its periodic steady state in the simulator. The simulator is run over a number of periods
 * again and again, each run starting from the capacitor volts and coil amps where the last one ended; between the runs the
 * start is improved by Anderson's mixing (J. ACM 12(4), 1965), so that slow circuits need tens of runs and not hours.
 */
import type { Network } from "@underchassis/calc";
import { type ExportOptions, exportNetwork } from "./export-network.ts";
import { simulate } from "./simulator.ts";
import { rowsOf } from "./trace-figures.ts";

const MEMORY = 6;
const MOST_RUNS = 60;

export interface Settled {
  initial: ReadonlyMap<string, number>;
  runs: number;
  /** Largest change of a state over one run, as a share of the largest value that state had. */
  drift: number;
}

/** Solves the small symmetric system a x = b; singular directions get nothing. */
function solve(a: number[][], b: number[]): number[] {
  const n = b.length;
  const rows = a.map((row, i) => [...row, b[i] ?? 0]);
  for (let k = 0; k < n; k += 1) {
    let best = k;
    for (let i = k + 1; i < n; i += 1) if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[best]?.[k] ?? 0)) best = i;
    const [pivotRow, other] = [rows[best] ?? [], rows[k] ?? []];
    [rows[k], rows[best]] = [pivotRow, other];
    const pivot = pivotRow[k] ?? 0;
    if (pivot === 0) return new Array<number>(n).fill(0);
    for (let i = k + 1; i < n; i += 1) {
      const row = rows[i] ?? [];
      const factor = (row[k] ?? 0) / pivot;
      for (let j = k; j <= n; j += 1) row[j] = (row[j] ?? 0) - factor * (pivotRow[j] ?? 0);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i -= 1) {
    const row = rows[i] ?? [];
    let sum = row[n] ?? 0;
    for (let j = i + 1; j < n; j += 1) sum -= (row[j] ?? 0) * (x[j] ?? 0);
    x[i] = sum / (row[i] ?? 1);
  }
  return x;
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
const minus = (a: readonly number[], b: readonly number[]): number[] => a.map((value, i) => value - (b[i] ?? 0));

/** The next start from the past starts `x` and where they led `f`. */
function mix(xs: readonly number[][], fs: readonly number[][]): number[] {
  const last = xs.length - 1;
  const [x, f] = [xs[last] ?? [], fs[last] ?? []];
  const residual = minus(f, x);
  const steps = xs.slice(0, last).map((past, i) => minus(residual, minus(fs[i] ?? [], past)));
  const images = fs.slice(0, last).map((past) => minus(f, past));
  const normal = steps.map((a, i) => steps.map((b, j) => dot(a, b) * (i === j ? 1 + 1e-10 : 1)));
  const share = solve(
    normal,
    steps.map((a) => dot(a, residual)),
  );
  return f.map((value, i) => value - share.reduce((sum, c, j) => sum + c * (images[j]?.[i] ?? 0), 0));
}

/** One run from `initial`; returns the states at its end. */
async function advance(network: Network, options: ExportOptions, initial: ReadonlyMap<string, number>, hertz: number, periods: number) {
  const exported = exportNetwork(network, { ...options, initial });
  const [stop, step] = [periods / hertz, 1 / hertz / 1000];
  const trace = await simulate(exported.lines, exported.saved, `.tran ${step} ${stop} ${stop - 2 * step} ${step} uic`);
  const end = rowsOf(trace) - 1;
  const read = (vector: string | undefined): number =>
    vector === undefined || vector === "v(0)" ? 0 : (trace.get(vector)?.[end] ?? Number.NaN);
  return exported.states.map((state) => read(state.plus) - read(state.minus));
}

/** Settles `network`; throws when the states still move by more than 4e-6 of their size over the last run. */
export async function settle(network: Network, options: ExportOptions, hertz: number, periods: number): Promise<Settled> {
  const names = exportNetwork(network, options).states.map((state) => state.name);
  const largest = names.map(() => 1e-6);
  let [xs, fs]: [number[][], number[][]] = [[], []];
  let start = names.map((name) => options.initial?.get(name) ?? 0);
  let drift = Number.POSITIVE_INFINITY;
  for (let run = 1; run <= MOST_RUNS; run += 1) {
    const initial = new Map(names.map((name, i) => [name, start[i] ?? 0]));
    const end = await advance(network, options, initial, hertz, periods);
    end.forEach((value, i) => {
      largest[i] = Math.max(largest[i] ?? 0, Math.abs(value));
    });
    const before = drift;
    drift = Math.max(0, ...end.map((value, i) => Math.abs(value - (start[i] ?? 0)) / (largest[i] ?? 1)));
    if (drift < 4e-6) return { initial: new Map(names.map((name, i) => [name, end[i] ?? 0])), runs: run, drift };
    // A jump that made things worse is forgotten with what led to it.
    if (drift > 2 * before) [xs, fs] = [[], []];
    xs = [...xs, start].slice(-MEMORY);
    fs = [...fs, end].slice(-MEMORY);
    const scaled = (rows: readonly number[][]): number[][] => rows.map((row) => row.map((value, i) => value / (largest[i] ?? 1)));
    start = xs.length < 2 ? end : mix(scaled(xs), scaled(fs)).map((value, i) => value * (largest[i] ?? 1));
  }
  throw new Error(`not settled after ${MOST_RUNS} runs: states still move by ${drift}`);
}
