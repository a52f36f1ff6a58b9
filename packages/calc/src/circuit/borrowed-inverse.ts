import { PeriodicFactors } from "./periodic-factors.ts";

/**
 * (I - M)^-1 from a transition matrix that is only nearly right, mended by each step that is taken with it
 * (Broyden, Math. Comp. 19, 1965: the least change that explains the residual just seen).
 */
export class BorrowedInverse {
  private readonly size: number;
  /** Volts, amperes and fluxes are weighed against each store's own size; unweighed, the mending spoils the small ones. */
  private readonly weights: Float64Array;
  /** Row-major inverse. */
  private readonly inverse: Float64Array;
  private previous: { step: Float64Array; residual: Float64Array } | undefined;

  constructor(transition: Float64Array, scales: Float64Array) {
    const size = scales.length;
    this.size = size;
    this.weights = scales.map((scale) => 1 / (scale * scale));
    this.inverse = new Float64Array(size * size);
    const factors = new PeriodicFactors(size, transition);
    const unit = new Float64Array(size);
    for (let column = 0; column < size; column++) {
      unit.fill(0);
      unit[column] = 1;
      const solved = factors.solve(unit);
      for (let row = 0; row < size; row++) this.inverse[row * size + column] = solved[row]!;
    }
  }

  /** One that is mended by itself from here on. */
  copy(): BorrowedInverse {
    const copy: BorrowedInverse = Object.create(BorrowedInverse.prototype);
    return Object.assign(copy, this, { inverse: Float64Array.from(this.inverse), previous: undefined });
  }

  private times(vector: Float64Array): Float64Array {
    const result = new Float64Array(this.size);
    for (let row = 0; row < this.size; row++) {
      let sum = 0;
      for (let k = 0; k < this.size; k++) sum += this.inverse[row * this.size + k]! * vector[k]!;
      result[row] = sum;
    }
    return result;
  }

  /** Correction for a residual (what the period adds to the stores). */
  step(residual: Float64Array): Float64Array {
    if (this.previous !== undefined) this.mend(this.previous.step, this.previous.residual, residual);
    const step = this.times(residual);
    this.previous = { step, residual: Float64Array.from(residual) };
    return step;
  }

  /** After a step the residual should have vanished; what is left tells how wrong the inverse was along it. */
  private mend(step: Float64Array, before: Float64Array, after: Float64Array): void {
    const { size, inverse, weights } = this;
    const drop = before.map((value, k) => value - after[k]!);
    const guessed = this.times(drop);
    let scale = 0;
    for (let k = 0; k < size; k++) scale += weights[k]! * step[k]! * guessed[k]!;
    let length = 0;
    for (let k = 0; k < size; k++) length += weights[k]! * step[k]! * step[k]!;
    if (Math.abs(scale) < 0.05 * length) return;
    const row = new Float64Array(size);
    for (let k = 0; k < size; k++) {
      const share = weights[k]! * step[k]!;
      for (let j = 0; j < size; j++) row[j] = row[j]! + share * inverse[k * size + j]!;
    }
    for (let k = 0; k < size; k++) {
      const factor = (step[k]! - guessed[k]!) / scale;
      for (let j = 0; j < size; j++) inverse[k * size + j] = inverse[k * size + j]! + factor * row[j]!;
    }
  }
}
