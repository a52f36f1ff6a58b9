/**
 * Readings against one value of a part, interpolated between simulated values by monotone cubics (Fritsch and Carlson, SIAM J. Numer.
 * Anal. 17, 1980). The abscissa is v / (v + c), on which a resistor from 0 to infinity has two finite ends and a divider is straight; c is the
 * geometric mean of the values.
 */
export class Curve {
  readonly #x: Float64Array;
  readonly #y: readonly Float64Array[];
  readonly #slopes: readonly Float64Array[];
  readonly #centre: number;

  /**
   * @param values rising, in the unit of the part; 0 and Infinity allowed at the ends
   * @param rows what every observable reads at each of the values
   */
  constructor(values: readonly number[], rows: readonly Float64Array[]) {
    const finite = values.filter((value) => value > 0 && Number.isFinite(value));
    this.#centre = Math.exp(finite.reduce((sum, value) => sum + Math.log(value), 0) / Math.max(1, finite.length));
    this.#x = Float64Array.from(values, (value) => this.#abscissa(value));
    this.#y = rows;
    this.#slopes = tangents(this.#x, rows);
  }

  #abscissa(value: number): number {
    return value === Number.POSITIVE_INFINITY ? 1 : value / (value + this.#centre);
  }

  /** Whether a value lies among those that were simulated. */
  covers(value: number): boolean {
    const x = this.#abscissa(value);
    return x >= this.#x[0]! - 1e-9 && x <= this.#x[this.#x.length - 1]! + 1e-9;
  }

  /** Readings at one value; outside the simulated values those of the nearest end. */
  at(value: number): Float64Array {
    const x = this.#abscissa(value);
    const last = this.#x.length - 1;
    let k = 0;
    while (k < last - 1 && x > this.#x[k + 1]!) k += 1;
    const [x0, x1] = [this.#x[k]!, this.#x[Math.min(k + 1, last)]!];
    const [y0, y1] = [this.#y[k]!, this.#y[Math.min(k + 1, last)]!];
    const h = x1 - x0;
    if (h <= 0 || x <= x0) return x <= x0 ? y0 : y1;
    if (x >= x1) return y1;
    const t = (x - x0) / h;
    const [m0, m1] = [this.#slopes[k]!, this.#slopes[k + 1]!];
    const [a, b, c, d] = [(1 + 2 * t) * (1 - t) ** 2, t * (1 - t) ** 2, t * t * (3 - 2 * t), t * t * (t - 1)];
    return y0.map((y, i) => a * y + b * h * m0[i]! + c * y1[i]! + d * h * m1[i]!);
  }
}

function tangents(x: Float64Array, rows: readonly Float64Array[]): Float64Array[] {
  const count = rows.length;
  const secants = rows.slice(1).map((row, k) => row.map((y, i) => (y - rows[k]![i]!) / Math.max(1e-12, x[k + 1]! - x[k]!)));
  return rows.map((row, k) =>
    row.map((_, i) => {
      const [before, after] = [secants[k - 1]?.[i], secants[k]?.[i]];
      if (before === undefined || after === undefined || count < 3) return before ?? after ?? 0;
      if (before * after <= 0) return 0;
      const [h0, h1] = [x[k]! - x[k - 1]!, x[k + 1]! - x[k]!];
      const [w0, w1] = [2 * h1 + h0, h1 + 2 * h0];
      return (w0 + w1) / (w0 / before + w1 / after);
    }),
  );
}
