import { portScratch } from "../devices/port-device.ts";
import type { LinearResponse } from "./linear-response.ts";
import type { FoldedDevice } from "./plant.ts";
import { TubeMeans } from "./tube-means.ts";

/** A rectifier of less slope than this, in siemens, is left out of a Newton step: what it does is still counted. */
const LEAST_SLOPE = 1e-7;
const PASSES = 40;
/** Currents may be wrong by so many times the share of the voltages, and by so many amperes. */
const AMPS_SHARE = 40;
const LEAST_AMPS = 1e-9;
/** Tubes that jump to and fro between bends of their curves go this share of the way from so many passes on. */
const DAMPED_FROM = 8;
const DAMPED_SHARE = 0.5;
/** Factors serve again when the same stages conduct and the last step was smaller than this share of the source. */
const REUSE_SHARE = 0.01;

/** Voltages that a solve starts from and leaves behind. */
export interface PortVolts {
  /** Active ports: [port][2 step + stage]. */
  active: Float64Array;
  /** Means of the quiet ports. */
  quiet: Float64Array;
}

/** Currents of the ports beyond those folded into the linear network. */
export interface PortAmps {
  active: Float64Array;
  quiet: Float64Array;
  passes: number;
}

/**
 * Newton's method on the port voltages of a whole period at once: rectifiers at every stage, tubes at their means. A step solves for
 * the stages that conduct alone; the others follow.
 */
export class PortSolver {
  private readonly linear: LinearResponse;
  private readonly rectifiers: readonly { device: FoldedDevice; at: number }[];
  private readonly tubes: TubeMeans;
  private readonly steps: number;
  private readonly amps: Float64Array;
  private readonly slopes: Float64Array;
  private readonly next: Float64Array;
  /** Stages that conduct, and those that the factors at hand are for. */
  private list = new Int32Array(0);
  private count = 0;
  private factored: Int32Array | undefined;
  private matrix = new Float64Array(0);

  constructor(linear: LinearResponse) {
    this.linear = linear;
    this.steps = linear.plant.symbol.steps;
    this.rectifiers = linear.active.flatMap(({ device, index }, at) => (index === 0 ? [{ device, at }] : []));
    this.tubes = new TubeMeans(linear);
    const size = linear.active.length * 2 * this.steps;
    this.amps = new Float64Array(size);
    this.slopes = new Float64Array(size);
    this.next = new Float64Array(size);
    this.list = new Int32Array(size);
  }

  /**
   * @param volts first guess, overwritten with the solution
   * @param open voltages of the active ports without any port current but the alternating ones of the tubes
   * @param excess mean currents of the tubes that come of their curvature, by quiet port
   * @param tolerance relative change of a port voltage at which it counts as found
   * @returns undefined when it is not found
   */
  solve(volts: PortVolts, open: Float64Array, excess: Float64Array, tolerance: number): PortAmps | undefined {
    const { amps, slopes, next } = this;
    const right = new Float64Array(amps.length);
    const before = new Float64Array(volts.quiet.length);
    let scale = 1;
    for (let k = 0; k < open.length; k++) scale = Math.max(scale, Math.abs(open[k]!));
    let last = Number.POSITIVE_INFINITY;
    for (let pass = 1; pass <= PASSES; pass++) {
      const mean = this.tubes.linearize(volts.quiet, excess);
      if (mean === undefined) return undefined;
      this.evaluate(volts.active);
      this.conducting();
      const means = this.means();
      this.residual(volts.active, open, mean.open, mean.ohms, means, right);
      if (!(last < REUSE_SHARE && this.factorsServe()) && !this.factor(mean.ohms)) return undefined;
      this.substitute(right);
      // What the step adds to the currents; voltages everywhere follow the currents.
      const { list, count } = this;
      for (let r = 0; r < count; r++) amps[list[r]!] = amps[list[r]!]! + right[r]!;
      const moved = this.means();
      this.respond(open, mean.open, mean.ohms, moved);
      let largest = 0;
      for (let k = 0; k < next.length; k++) {
        // A tangent that asks a forward junction for current backwards asks it to block: down its exponential it would walk for long.
        const value =
          amps[k]! < 0 && slopes[k]! > LEAST_SLOPE && volts.active[k]! > 0 && pass < PASSES / 2 ? Math.min(0, next[k]!) : next[k]!;
        const difference = Math.abs(value - volts.active[k]!);
        if (!(difference < Number.POSITIVE_INFINITY)) return undefined;
        if ((slopes[k]! > LEAST_SLOPE || value > 0) && difference > largest * scale) largest = difference / scale;
        volts.active[k] = value;
      }
      before.set(volts.quiet);
      const quiet = this.tubes.follow(moved, volts.quiet);
      const share = pass < DAMPED_FROM ? 1 : DAMPED_SHARE;
      for (let k = 0; k < before.length; k++) {
        const difference = Math.abs(volts.quiet[k]! - before[k]!);
        if (share < 1) volts.quiet[k] = before[k]! + share * (volts.quiet[k]! - before[k]!);
        if (!(difference < Number.POSITIVE_INFINITY)) return undefined;
        largest = Math.max(largest, difference / (1 + Math.abs(before[k]!)));
      }
      if (largest < tolerance) {
        // A junction's volts hardly move while its current does: only where the curve gives the currents too is it a solution.
        const active = Float64Array.from(amps);
        this.evaluate(volts.active);
        if (this.agrees(active, AMPS_SHARE * tolerance)) return { active, quiet, passes: pass };
        this.factored = undefined;
      }
      last = largest;
    }
    return undefined;
  }

  /** Whether currents lie within this share of the largest of what the curves give. */
  private agrees(active: Float64Array, share: number): boolean {
    const { amps } = this;
    let most = 0;
    let wrong = 0;
    for (let k = 0; k < amps.length; k++) {
      most = Math.max(most, Math.abs(amps[k]!));
      wrong = Math.max(wrong, Math.abs(amps[k]! - active[k]!));
    }
    return wrong <= share * most + LEAST_AMPS;
  }

  private means(): Float64Array {
    const { steps, amps } = this;
    const { weights } = this.linear;
    const means = new Float64Array(this.linear.active.length);
    for (let p = 0; p < means.length; p++) {
      let first = 0;
      let second = 0;
      for (let k = 2 * p * steps; k < 2 * (p + 1) * steps; k += 2) {
        first += amps[k]!;
        second += amps[k + 1]!;
      }
      means[p] = weights[0] * first + weights[1] * second;
    }
    return means;
  }

  /** Currents beyond those folded in, and their slopes. */
  private evaluate(volts: Float64Array): void {
    const { amps, slopes } = this;
    const stages = 2 * this.steps;
    const scratch = portScratch(1);
    for (const { device, at } of this.rectifiers) {
      const fold = device.fold[0]!;
      const curve = device.device;
      for (let k = at * stages; k < (at + 1) * stages; k++) {
        scratch.volts[0] = volts[k]!;
        curve.evaluate(scratch, 0);
        amps[k] = scratch.amps[0]! - fold * volts[k]!;
        slopes[k] = scratch.slopes[0]! - fold;
      }
    }
  }

  private conducting(): void {
    const { slopes, list } = this;
    let count = 0;
    for (let k = 0; k < slopes.length; k++) if (slopes[k]! > LEAST_SLOPE) list[count++] = k;
    this.count = count;
  }

  private factorsServe(): boolean {
    const { factored, list, count } = this;
    if (factored === undefined || factored.length !== count) return false;
    for (let k = 0; k < count; k++) if (factored[k] !== list[k]) return false;
    return true;
  }

  /** What the present currents make of the voltages of the stages that conduct, less the voltages. */
  private residual(
    volts: Float64Array,
    open: Float64Array,
    meanOpen: Float64Array,
    meanOhms: Float64Array,
    means: Float64Array,
    right: Float64Array,
  ): void {
    const { list, count, steps, amps } = this;
    const { kernel, active } = this.linear;
    const a = active.length;
    const stages = 2 * steps;
    for (let r = 0; r < count; r++) {
      const row = list[r]!;
      const port = (row / stages) | 0;
      let sum = open[row]! + meanOpen[port]! - volts[row]!;
      for (let b = 0; b < a; b++) sum -= meanOhms[port * a + b]! * means[b]!;
      const m = (row - port * stages) >> 1;
      const i = row & 1;
      for (let c = 0; c < count; c++) {
        const column = list[c]!;
        const b = (column / stages) | 0;
        let lag = m - ((column - b * stages) >> 1);
        if (lag < 0) lag += steps;
        sum -= kernel[((port * a + b) * 4 + 2 * i + (column & 1)) * steps + lag]! * amps[column]!;
      }
      right[r] = sum;
    }
  }

  /**
   * Factors Z + 1/slopes on the stages that conduct. Its symmetric part is positive (a network of passive parts takes power in), so
   * that no rows need to be exchanged.
   */
  private factor(meanOhms: Float64Array): boolean {
    const { list, count, steps, slopes } = this;
    const { kernel, active, weights } = this.linear;
    const a = active.length;
    const stages = 2 * steps;
    if (this.matrix.length < count * count) this.matrix = new Float64Array(count * count);
    const { matrix } = this;
    for (let r = 0; r < count; r++) {
      const row = list[r]!;
      const port = (row / stages) | 0;
      const m = (row - port * stages) >> 1;
      const i = row & 1;
      const base = r * count;
      for (let c = 0; c < count; c++) {
        const column = list[c]!;
        const b = (column / stages) | 0;
        const l = column & 1;
        let lag = m - ((column - b * stages) >> 1);
        if (lag < 0) lag += steps;
        matrix[base + c] =
          kernel[((port * a + b) * 4 + 2 * i + l) * steps + lag]! + meanOhms[port * a + b]! * (l === 0 ? weights[0] : weights[1]);
      }
      matrix[base + r] = matrix[base + r]! + 1 / slopes[row]!;
    }
    this.factored = list.slice(0, count);
    return eliminate(count, matrix);
  }

  private substitute(right: Float64Array): void {
    const { matrix, count } = this;
    for (let i = 1; i < count; i++) {
      const base = i * count;
      let sum = right[i]!;
      for (let j = 0; j < i; j++) sum -= matrix[base + j]! * right[j]!;
      right[i] = sum;
    }
    for (let i = count - 1; i >= 0; i--) {
      const base = i * count;
      let sum = right[i]!;
      for (let j = i + 1; j < count; j++) sum -= matrix[base + j]! * right[j]!;
      right[i] = sum * matrix[base + i]!;
    }
  }

  private respond(open: Float64Array, meanOpen: Float64Array, meanOhms: Float64Array, means: Float64Array): void {
    const { steps, list, count, amps, next: out } = this;
    const { kernel, active } = this.linear;
    const a = active.length;
    const stages = 2 * steps;
    for (let p = 0; p < a; p++) {
      let mean = meanOpen[p]!;
      for (let b = 0; b < a; b++) mean -= meanOhms[p * a + b]! * means[b]!;
      for (let k = p * stages; k < (p + 1) * stages; k++) out[k] = open[k]! + mean;
    }
    for (let c = 0; c < count; c++) {
      const column = list[c]!;
      const amp = amps[column]!;
      const b = (column / stages) | 0;
      const from = (column - b * stages) >> 1;
      const l = column & 1;
      for (let p = 0; p < a; p++) {
        for (let i = 0; i < 2; i++) {
          const at = ((p * a + b) * 4 + 2 * i + l) * steps - from;
          let to = p * stages + i;
          for (let k = at + steps; k < at + steps + from; k++, to += 2) out[to] = out[to]! - kernel[k]! * amp;
          for (let k = at + from; k < at + steps; k++, to += 2) out[to] = out[to]! - kernel[k]! * amp;
        }
      }
    }
  }
}

/** LU factors in place without exchanges, two columns at a time; the diagonal is kept inverted. */
function eliminate(size: number, a: Float64Array): boolean {
  let k = 0;
  for (; k + 1 < size; k += 2) {
    const first = k * size;
    const second = first + size;
    const p = a[first + k]!;
    if (!(Math.abs(p) > 1e-300)) return false;
    const ip = 1 / p;
    const f = a[second + k]! * ip;
    a[first + k] = ip;
    a[second + k] = f;
    for (let j = k + 1; j < size; j++) a[second + j] = a[second + j]! - f * a[first + j]!;
    const q = a[second + k + 1]!;
    if (!(Math.abs(q) > 1e-300)) return false;
    const iq = 1 / q;
    a[second + k + 1] = iq;
    const cross = a[first + k + 1]!;
    for (let row = second + size; row < size * size; row += size) {
      const g = a[row + k]! * ip;
      const h = (a[row + k + 1]! - g * cross) * iq;
      a[row + k] = g;
      a[row + k + 1] = h;
      for (let j = k + 2; j < size; j++) a[row + j] = a[row + j]! - g * a[first + j]! - h * a[second + j]!;
    }
  }
  if (k < size) {
    const p = a[k * size + k]!;
    if (!(Math.abs(p) > 1e-300)) return false;
    a[k * size + k] = 1 / p;
  }
  return true;
}
