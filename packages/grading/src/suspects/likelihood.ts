import type { ReadingQuantity } from "../model/index.ts";
import { type Ground, stretchOf } from "./ground.ts";
import { scaled, scaleSlope } from "./observable.ts";
import { invertSymmetric } from "./symmetric.ts";

/**
 * How far the model itself may be off, as a share of a reading: tube curves, waveforms, what the simulator leaves out. Ohms: on the
 * logarithm. From the comparison of 25 job supplies with an independent simulator (0.5 % of means, 5 % of ripple).
 */
const MODEL_ERROR: Readonly<Record<ReadingQuantity, number>> = {
  "dc-volts": 0.005,
  "ac-volts": 0.03,
  "ripple-volts": 0.04,
  ohms: 0.005,
  "dc-amps": 0.015,
  "ac-amps": 0.04,
};
/** The same of what the fault changes: a short has some resistance, a leak some voltage dependence. */
const CHANGE_ERROR = 0.015;
/** Smallest deviation that means anything: last digits, pick-up, contact potentials. Volts, ohms (log), amperes. common-practice. */
const FLOOR: Readonly<Record<ReadingQuantity, number>> = {
  "dc-volts": 0.02,
  "ac-volts": 0.02,
  "ripple-volts": 0.01,
  ohms: 0.002,
  "dc-amps": 1e-4,
  "ac-amps": 1e-4,
};
/** Floor as a share of the chassis's largest voltage. */
const FLOOR_SHARE = 1.5e-4;
/** The same of ripple, which a blocking capacitor frees from the voltage that it rides on. */
const RIPPLE_SHARE = 2e-5;
/** How often a reading is a slip: a digit misread, the wrong point, the wrong range. common-practice. */
const SLIP = 0.01;
/** Natural logarithm of an ohmmeter's whole scale, from a tenth of an ohm to 20 megohm. */
const OHMS_SCALE = 19;

/** What one hypothesis makes of the readings. */
export interface Fit {
  logLikelihood: number;
  /** Deviation of each reading in standard deviations, by itself. */
  deviations: Float64Array;
  /** Sum of the squared deviations, what they have in common taken out: about the number of readings where the hypothesis holds. */
  squares: number;
  /** Index among the readings of the one that is best taken for a slip, when one is. */
  slip?: number;
}

export interface FitOptions {
  /** Slopes at the fault itself, where they were computed; else the healthy chassis's, stretched as the reading is. */
  slopes?: Float64Array;
  /** Share of what the fault changes that the prediction may be off by, when it is a first look only. */
  loose?: number;
}

/** The likelihood of a set of readings under any prediction, with the covariance that tolerances and meters give them. */
export class Likelihood {
  readonly indices: readonly number[];
  readonly #ground: Ground;
  readonly #values: Float64Array;
  readonly #quantities: readonly ReadingQuantity[];
  readonly #base: Float64Array;
  /** What the middle of the tolerances makes of each reading, beside the nominal values. */
  readonly #offsets: Float64Array;
  readonly #broad: Float64Array;

  /** @param readings index of the observable, and what the meter showed in its own unit */
  constructor(ground: Ground, readings: readonly { index: number; value: number }[]) {
    this.#ground = ground;
    this.indices = readings.map(({ index }) => index);
    this.#quantities = readings.map(({ index }) => ground.observables[index]!.quantity);
    this.#values = Float64Array.from(readings, ({ value }, k) => scaled(this.#quantities[k]!, value));
    this.#base = this.covariance(ground.slopes);
    this.#offsets = this.#offsetsOf(ground.slopes);
    this.#broad = Float64Array.from(readings, ({ value }, k) => this.#span(this.#quantities[k]!, value));
  }

  /** n x n covariance of the readings from rows of slopes per standard deviation. */
  covariance(slopes: Float64Array): Float64Array {
    const n = this.indices.length;
    const width = this.#ground.parameters.length;
    const out = new Float64Array(n * n);
    for (let i = 0; i < n; i += 1)
      for (let j = 0; j <= i; j += 1) {
        let sum = 0;
        const [a, b] = [this.indices[i]! * width, this.indices[j]! * width];
        for (let k = 0; k < width; k += 1) sum += slopes[a + k]! * slopes[b + k]!;
        out[i * n + j] = sum;
        out[j * n + i] = sum;
      }
    return out;
  }

  #offsetsOf(slopes: Float64Array): Float64Array {
    const { parameters } = this.#ground;
    return Float64Array.from(this.indices, (index) =>
      parameters.reduce((sum, { offset }, k) => sum + slopes[index * parameters.length + k]! * offset, this.#ground.offsets[index]!),
    );
  }

  /** Range over which a reading that nothing explains may lie. */
  #span(quantity: ReadingQuantity, value: number): number {
    if (quantity === "ohms") return OHMS_SCALE;
    if (quantity === "ripple-volts" || quantity === "ac-volts") return Math.max(0.3 * this.#ground.volts, 2 * Math.abs(value));
    if (quantity === "dc-volts") return Math.max(1.3 * this.#ground.volts, 2 * Math.abs(value));
    return Math.max(0.05, 2 * Math.abs(value));
  }

  /** Log likelihood when nothing is known of where the readings lie. */
  get unexplained(): number {
    let sum = 0;
    for (const span of this.#broad) sum -= Math.log(span);
    return sum;
  }

  /**
   * @param predicted scaled readings, by observable; those that are NaN are left out
   */
  fit(predicted: Float64Array, { slopes, loose = 0 }: FitOptions = {}): Fit {
    const base = slopes === undefined ? this.#base : this.covariance(slopes);
    const offsets = slopes === undefined ? this.#offsets : this.#offsetsOf(slopes);
    const known = this.indices.flatMap((index, k) => (Number.isNaN(predicted[index]!) ? [] : [k]));
    const [n, all] = [known.length, this.indices.length];
    const residuals = new Float64Array(n);
    const matrix = new Float64Array(n * n);
    for (const [i, a] of known.entries()) for (const [j, b] of known.entries()) matrix[i * n + j] = base[a * all + b]!;
    for (const [i, k] of known.entries()) {
      const index = this.indices[k]!;
      const [value, healthy] = [predicted[index]!, this.#ground.nominal[index]!];
      const quantity = this.#quantities[k]!;
      const stretch = slopes === undefined ? stretchOf(quantity, value, healthy, this.#ground.volts) : 1;
      residuals[i] = this.#values[k]! - value - stretch * offsets[k]!;
      if (stretch !== 1)
        for (let j = 0; j < n; j += 1) {
          matrix[i * n + j] = matrix[i * n + j]! * stretch;
          matrix[j * n + i] = matrix[j * n + i]! * stretch;
        }
    }
    for (const [i, k] of known.entries()) {
      const index = this.indices[k]!;
      const value = predicted[index]!;
      const healthy = this.#ground.nominal[index]!;
      const own = ownVariance(this.#ground, index, value);
      matrix[i * n + i] = matrix[i * n + i]! + own + (this.#quantities[k] === "ohms" ? 0 : (loose * (value - healthy)) ** 2);
    }
    const fit = fitOf(
      residuals,
      matrix,
      known.map((k) => this.#broad[k]!),
    );
    if (n === all) return fit;
    // What a first look cannot tell may be anything, so that it gains nothing by it.
    const untold = this.indices.reduce((sum, index, k) => sum + (Number.isNaN(predicted[index]!) ? Math.log(this.#broad[k]!) : 0), 0);
    const deviations = new Float64Array(all);
    for (const [i, k] of known.entries()) deviations[k] = fit.deviations[i]!;
    return { ...fit, logLikelihood: fit.logLikelihood - untold, deviations, ...(fit.slip === undefined ? {} : { slip: known[fit.slip]! }) };
  }

  /** Log likelihood when nothing ties the readings to each other. @param predicted scaled readings, by observable */
  alone(predicted: Float64Array): number {
    let sum = 0;
    for (const [k, index] of this.indices.entries()) {
      const value = predicted[index]!;
      if (Number.isNaN(value)) {
        sum -= Math.log(this.#broad[k]!);
        continue;
      }
      const stretch = stretchOf(this.#quantities[k]!, value, this.#ground.nominal[index]!, this.#ground.volts);
      const variance = this.#base[k * this.indices.length + k]! * stretch ** 2 + ownVariance(this.#ground, index, value);
      const residual = this.#values[k]! - value - stretch * this.#offsets[k]!;
      const clean = Math.log1p(-SLIP) - 0.5 * (residual ** 2 / variance + Math.log(2 * Math.PI * variance));
      sum += logSum([clean, Math.log(SLIP) - Math.log(this.#broad[k]!)]);
    }
    return sum;
  }

  /**
   * Likeliest shift of one value, in its standard deviations, when all values are as uncertain as the slopes say: the projection of
   * the residuals on its column.
   */
  estimate(predicted: Float64Array, slopes: Float64Array, column: number): number {
    const n = this.indices.length;
    const width = this.#ground.parameters.length;
    const matrix = this.covariance(slopes);
    for (const [k, index] of this.indices.entries())
      matrix[k * n + k] = matrix[k * n + k]! + ownVariance(this.#ground, index, predicted[index]!);
    const { inverse } = invertSymmetric(matrix, n);
    const offsets = this.#offsetsOf(slopes);
    let sum = 0;
    for (let i = 0; i < n; i += 1)
      for (let j = 0; j < n; j += 1)
        sum +=
          slopes[this.indices[i]! * width + column]! *
          inverse[i * n + j]! *
          (this.#values[j]! - predicted[this.indices[j]!]! - offsets[j]!);
    return sum;
  }

  /** Standard deviation of one reading of the healthy chassis. */
  deviation(k: number): number {
    const index = this.indices[k]!;
    const healthy = this.#ground.nominal[index]!;
    return Math.sqrt(this.#base[k * this.indices.length + k]! + ownVariance(this.#ground, index, healthy));
  }
}

/** Variance of one reading from the meter, the model and the last digit. */
export function ownVariance(ground: Ground, index: number, predicted: number): number {
  const { quantity, accuracy } = ground.observables[index]!;
  const healthy = ground.nominal[index]!;
  const change = CHANGE_ERROR * Math.abs(predicted - healthy);
  if (quantity === "ohms") {
    // Above a megohm, capacitors that charge and damp insulation make the reading a guess.
    const soft = predicted > Math.log(1e6) ? 0.1 * (predicted - Math.log(1e6)) : 0;
    return (
      (accuracy / 2) ** 2 +
      MODEL_ERROR.ohms ** 2 +
      FLOOR.ohms ** 2 +
      change ** 2 * 0.1 +
      soft ** 2 +
      ground.soft[index]! ** 2 +
      (0.3 * scaleSlope("ohms", Math.exp(predicted))) ** 2
    );
  }
  const share = Math.hypot(accuracy / (quantity === "dc-volts" || quantity === "dc-amps" ? 1.5 : 1), MODEL_ERROR[quantity]);
  const floor =
    FLOOR[quantity] +
    (quantity === "dc-volts" || quantity === "ac-volts" ? FLOOR_SHARE : quantity === "ripple-volts" ? RIPPLE_SHARE : 0) * ground.volts;
  return (share * predicted) ** 2 + floor ** 2 + change ** 2 + ground.soft[index]! ** 2;
}

/**
 * Multivariate normal density with, for each reading, the chance that it is a slip of its own. Leaving reading i out takes
 * (P r)_i^2 / P_ii off the quadratic form and adds ln P_ii to the log determinant, P being the inverse of the covariance.
 */
function fitOf(residuals: Float64Array, matrix: Float64Array, broad: readonly number[]): Fit {
  const n = residuals.length;
  const deviations = residuals.map((residual, i) => residual / Math.sqrt(matrix[i * n + i]!));
  const { inverse, logDeterminant } = invertSymmetric(matrix, n);
  const weighted = new Float64Array(n);
  let quadratic = 0;
  for (let i = 0; i < n; i += 1) {
    let sum = 0;
    for (let j = 0; j < n; j += 1) sum += inverse[i * n + j]! * residuals[j]!;
    weighted[i] = sum;
    quadratic += sum * residuals[i]!;
  }
  const normal = n * Math.log(2 * Math.PI);
  const clean = -0.5 * (quadratic + logDeterminant + normal) + n * Math.log1p(-SLIP);
  const terms = [clean];
  let best = clean;
  let slip: number | undefined;
  for (let i = 0; i < n; i += 1) {
    const p = inverse[i * n + i]!;
    const without = -0.5 * (quadratic - weighted[i]! ** 2 / p + logDeterminant + Math.log(p) + normal - Math.log(2 * Math.PI));
    const term = without + (n - 1) * Math.log1p(-SLIP) + Math.log(SLIP) - Math.log(broad[i]!);
    terms.push(term);
    if (term > best) {
      best = term;
      slip = i;
    }
  }
  return { logLikelihood: logSum(terms), deviations, squares: quadratic, ...(slip === undefined ? {} : { slip }) };
}

/** ln of a sum of exponentials. */
export function logSum(terms: readonly number[]): number {
  const most = Math.max(...terms);
  if (most === Number.NEGATIVE_INFINITY) return most;
  let sum = 0;
  for (const term of terms) sum += Math.exp(term - most);
  return most + Math.log(sum);
}
