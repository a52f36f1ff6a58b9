/** Means, RMS and extremes of a trace over a stretch of time, by the trapezoidal rule on the simulator's own steps. */
import type { CurrentReading } from "./netlist-writer.ts";
import type { Trace } from "./simulator.ts";

export interface Figures {
  mean: number;
  rms: number;
  max: number;
  min: number;
}

function vector(trace: Trace, name: string): Float64Array {
  const found = trace.get(name);
  if (found === undefined) throw new Error(`the simulator gave no ${name}; it gave ${[...trace.keys()].join(" ")}`);
  return found;
}

/** Number of rows of a trace. */
export function rowsOf(trace: Trace): number {
  for (const values of trace.values()) return values.length;
  return 0;
}

/** Voltage between two nodes at every step. */
export function voltsBetween(trace: Trace, plus: string, minus: string): Float64Array {
  const rows = rowsOf(trace);
  const a = plus === "0" ? new Float64Array(rows) : vector(trace, `v(${plus})`);
  if (minus === "0") return a;
  const b = vector(trace, `v(${minus})`);
  return a.map((value, row) => value - (b[row] ?? 0));
}

/** Current of an element at every step. */
export function ampsOf(trace: Trace, current: CurrentReading): Float64Array {
  switch (current.from) {
    case "vector":
      return vector(trace, current.vector);
    case "constant":
      return new Float64Array(rowsOf(trace)).fill(current.amps);
    case "ohms":
      return voltsBetween(trace, ...current.nodes).map((volts) => volts / current.ohms);
  }
}

/** Value at an instant, on the straight line between neighbours. */
export function valueAt(times: Float64Array, values: Float64Array, seconds: number): number {
  let high = times.findIndex((time) => time >= seconds);
  if (high < 0) high = times.length - 1;
  const low = Math.max(0, high - 1);
  const [t0, t1, v0, v1] = [times[low] ?? 0, times[high] ?? 0, values[low] ?? 0, values[high] ?? 0];
  return t1 <= t0 ? v1 : v0 + ((v1 - v0) * (Math.min(seconds, t1) - t0)) / (t1 - t0);
}

/** Figures between two instants; the ends are interpolated. */
export function figuresBetween(times: Float64Array, values: Float64Array, from: number, to: number): Figures {
  let [area, square, max, min] = [0, 0, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [t, v] = [from, valueAt(times, values, from)];
  const step = (nextT: number, nextV: number): void => {
    const h = nextT - t;
    area += (h * (v + nextV)) / 2;
    square += (h * (v * v + v * nextV + nextV * nextV)) / 3;
    max = Math.max(max, v, nextV);
    min = Math.min(min, v, nextV);
    [t, v] = [nextT, nextV];
  };
  for (let row = 0; row < times.length; row += 1) {
    const time = times[row] ?? 0;
    if (time > from && time < to) step(time, values[row] ?? 0);
  }
  step(to, valueAt(times, values, to));
  return { mean: area / (to - from), rms: Math.sqrt(square / (to - from)), max, min };
}

/** Figures of a constant. */
export function constantFigures(value: number): Figures {
  return { mean: value, rms: Math.abs(value), max: value, min: value };
}
