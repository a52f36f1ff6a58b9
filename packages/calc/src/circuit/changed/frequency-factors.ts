/** Entries of a square matrix conductances + s * stores, both real and row-major. */
export interface Pencil {
  size: number;
  conductances: Float64Array;
  stores: Float64Array;
}

/** A pivot may be this much smaller than the largest in its column, when it leaves fewer entries. */
const PIVOT_SHARE = 0.05;
const LEAST_PIVOT = 1e-13;

/**
 * A network's matrix factored at many complex frequencies, in one order of elimination that keeps it sparse. Columns of the
 * inverses are worked out when they are first asked for.
 */
export class FrequencyFactors {
  readonly size: number;
  readonly places: number;
  /** Whether the matrix could be factored at every frequency. */
  readonly regular: boolean;
  private readonly rowOrder: Int32Array;
  private readonly columnOrder: Int32Array;
  /** Factors at each place, [place][row][column] in the order of elimination, interleaved. */
  private readonly factors: Float64Array;
  /** Columns below and above the diagonal that are filled, by row of the order. */
  private readonly lower: Int32Array[] = [];
  private readonly upper: Int32Array[] = [];
  private readonly columns: (Float64Array | undefined)[];
  private readonly work: Float64Array;

  constructor(pencil: Pencil, re: Float64Array, im: Float64Array) {
    const { size } = pencil;
    this.size = size;
    this.places = re.length;
    this.columns = new Array(size);
    this.work = new Float64Array(2 * size);
    this.rowOrder = new Int32Array(size);
    this.columnOrder = new Int32Array(size);
    this.factors = new Float64Array(2 * size * size * re.length);
    this.regular = this.order(pencil, [re[0]!, re[re.length >> 1]!]) && this.factor(pencil, re, im);
  }

  /**
   * Chooses pivots that have few entries in their row and column and are not small against their column, neither near zero frequency, where
   * capacitors vanish, nor in the middle.
   */
  private order(pencil: Pencil, frequencies: readonly number[]): boolean {
    const { size, conductances, stores } = pencil;
    const matrices = frequencies.map((s) => scaledRows(pencil, s));
    // A filled place stays filled whatever the frequency.
    const filled = new Uint8Array(size * size);
    for (let k = 0; k < filled.length; k++) filled[k] = conductances[k] !== 0 || stores[k] !== 0 ? 1 : 0;
    const rows = Array.from({ length: size }, (_, k) => k);
    const columns = Array.from({ length: size }, (_, k) => k);
    for (let k = 0; k < size; k++) {
      const rowCount = new Int32Array(size);
      const columnCount = new Int32Array(size);
      const largest = matrices.map(() => new Float64Array(size));
      for (let i = k; i < size; i++) {
        for (let j = k; j < size; j++) {
          const at = rows[i]! * size + columns[j]!;
          if (filled[at] === 0) continue;
          rowCount[i]! += 1;
          columnCount[j]! += 1;
          for (const [m, a] of matrices.entries()) largest[m]![j] = Math.max(largest[m]![j]!, Math.abs(a[at]!));
        }
      }
      let best = Number.POSITIVE_INFINITY;
      let [row, column] = [-1, -1];
      for (let i = k; i < size; i++) {
        for (let j = k; j < size; j++) {
          const at = rows[i]! * size + columns[j]!;
          if (filled[at] === 0) continue;
          let least = Number.POSITIVE_INFINITY;
          for (const [m, a] of matrices.entries()) {
            const value = Math.abs(a[at]!);
            least = Math.min(least, value > LEAST_PIVOT && value >= PIVOT_SHARE * largest[m]![j]! ? value : 0);
          }
          if (least === 0) continue;
          const cost = (rowCount[i]! - 1) * (columnCount[j]! - 1) - least * 1e-3;
          if (cost < best) [best, row, column] = [cost, i, j];
        }
      }
      if (row < 0) return false;
      [rows[k], rows[row]] = [rows[row]!, rows[k]!];
      [columns[k], columns[column]] = [columns[column]!, columns[k]!];
      const pivotRow = rows[k]! * size;
      for (let i = k + 1; i < size; i++) {
        const at = rows[i]! * size;
        if (filled[at + columns[k]!] === 0) continue;
        for (let j = k + 1; j < size; j++) if (filled[pivotRow + columns[j]!] !== 0) filled[at + columns[j]!] = 1;
        for (const a of matrices) {
          const factor = a[at + columns[k]!]! / a[pivotRow + columns[k]!]!;
          for (let j = k + 1; j < size; j++) {
            a[at + columns[j]!] = a[at + columns[j]!]! - factor * a[pivotRow + columns[j]!]!;
          }
        }
      }
    }
    this.rowOrder.set(rows);
    this.columnOrder.set(columns);
    for (let i = 0; i < size; i++) {
      const below: number[] = [];
      const above: number[] = [];
      for (let j = 0; j < size; j++) {
        if (j === i || filled[rows[i]! * size + columns[j]!] === 0) continue;
        (j < i ? below : above).push(j);
      }
      this.lower.push(Int32Array.from(below));
      this.upper.push(Int32Array.from(above));
    }
    return true;
  }

  private factor(pencil: Pencil, re: Float64Array, im: Float64Array): boolean {
    const { size, factors, rowOrder, columnOrder, lower, upper } = this;
    const { conductances, stores } = pencil;
    for (let place = 0; place < re.length; place++) {
      const origin = 2 * size * size * place;
      const [sr, si] = [re[place]!, im[place]!];
      for (let i = 0; i < size; i++) {
        const row = rowOrder[i]! * size;
        let largest = 0;
        for (let j = 0; j < size; j++) {
          const from = row + columnOrder[j]!;
          const at = origin + 2 * (i * size + j);
          const store = stores[from]!;
          factors[at] = conductances[from]! + sr * store;
          factors[at + 1] = si * store;
          largest = Math.max(largest, Math.abs(factors[at]!) + Math.abs(factors[at + 1]!));
        }
        const base = origin + 2 * i * size;
        const below = lower[i]!;
        for (let l = 0; l < below.length; l++) {
          const k = below[l]!;
          const [fr, fi] = [factors[base + 2 * k]!, factors[base + 2 * k + 1]!];
          if (fr === 0 && fi === 0) continue;
          // The diagonal is kept inverted.
          const pivotRow = origin + 2 * k * size;
          const [pr, pi] = [factors[pivotRow + 2 * k]!, factors[pivotRow + 2 * k + 1]!];
          const [mr, mi] = [fr * pr - fi * pi, fr * pi + fi * pr];
          factors[base + 2 * k] = mr;
          factors[base + 2 * k + 1] = mi;
          const above = upper[k]!;
          for (let u = 0; u < above.length; u++) {
            const j = 2 * above[u]!;
            const [ar, ai] = [factors[pivotRow + j]!, factors[pivotRow + j + 1]!];
            factors[base + j] = factors[base + j]! - mr * ar + mi * ai;
            factors[base + j + 1] = factors[base + j + 1]! - mr * ai - mi * ar;
          }
        }
        const [dr, di] = [factors[base + 2 * i]!, factors[base + 2 * i + 1]!];
        const square = dr * dr + di * di;
        if (!(Math.sqrt(square) > LEAST_PIVOT * largest)) return false;
        factors[base + 2 * i] = dr / square;
        factors[base + 2 * i + 1] = -di / square;
      }
    }
    return true;
  }

  /**
   * Solves at one place.
   *
   * @param right right side by row, interleaved
   * @param out receives the unknowns, interleaved, from `at` on
   */
  solve(place: number, right: Float64Array, out: Float64Array, at: number): void {
    const { size, factors, rowOrder, columnOrder, lower, upper } = this;
    const origin = 2 * size * size * place;
    const work = this.work;
    for (let i = 0; i < size; i++) {
      let re = right[2 * rowOrder[i]!]!;
      let im = right[2 * rowOrder[i]! + 1]!;
      const base = origin + 2 * i * size;
      const below = lower[i]!;
      for (let l = 0; l < below.length; l++) {
        const k = 2 * below[l]!;
        const [xr, xi] = [work[k]!, work[k + 1]!];
        if (xr === 0 && xi === 0) continue;
        re -= factors[base + k]! * xr - factors[base + k + 1]! * xi;
        im -= factors[base + k]! * xi + factors[base + k + 1]! * xr;
      }
      work[2 * i] = re;
      work[2 * i + 1] = im;
    }
    for (let i = size - 1; i >= 0; i--) {
      let re = work[2 * i]!;
      let im = work[2 * i + 1]!;
      const base = origin + 2 * i * size;
      const above = upper[i]!;
      for (let u = 0; u < above.length; u++) {
        const k = 2 * above[u]!;
        const [xr, xi] = [work[k]!, work[k + 1]!];
        re -= factors[base + k]! * xr - factors[base + k + 1]! * xi;
        im -= factors[base + k]! * xi + factors[base + k + 1]! * xr;
      }
      const [pr, pi] = [factors[base + 2 * i]!, factors[base + 2 * i + 1]!];
      work[2 * i] = re * pr - im * pi;
      work[2 * i + 1] = re * pi + im * pr;
    }
    for (let i = 0; i < size; i++) {
      out[at + 2 * columnOrder[i]!] = work[2 * i]!;
      out[at + 2 * columnOrder[i]! + 1] = work[2 * i + 1]!;
    }
  }

  /** Column of the inverse that belongs to a row of the right side: [place][unknown], interleaved. */
  column(row: number): Float64Array {
    let column = this.columns[row];
    if (column === undefined) {
      const { size, places } = this;
      column = new Float64Array(2 * size * places);
      const unit = new Float64Array(2 * size);
      unit[2 * row] = 1;
      for (let place = 0; place < places; place++) this.solve(place, unit, column, 2 * size * place);
      this.columns[row] = column;
    }
    return column;
  }
}

/** The matrix at one frequency, every row divided by its largest entry. */
function scaledRows({ size, conductances, stores }: Pencil, s: number): Float64Array {
  const a = Float64Array.from(conductances, (value, k) => value + s * stores[k]!);
  for (let row = 0; row < size; row++) {
    let scale = 0;
    for (let k = row * size; k < (row + 1) * size; k++) scale = Math.max(scale, Math.abs(a[k]!));
    for (let k = row * size; k < (row + 1) * size; k++) a[k] = a[k]! / (scale || 1);
  }
  return a;
}
