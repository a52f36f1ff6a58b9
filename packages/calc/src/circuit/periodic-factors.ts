/** Pivots of I - M below this leave their direction undetermined: the period returns it exactly as it was. */
const LEAST_PIVOT = 1e-13;

/**
 * Factors of I - M, with M what a period makes of the stores, by elimination with complete pivoting. A direction that a
 * period does not change (the flux of a lossless core, a current round two coils without resistance) has no determined
 * value; its shift is left at zero.
 */
export class PeriodicFactors {
  readonly size: number;
  /** Number of directions that the period determines. */
  readonly rank: number;
  private readonly factors: Float64Array;
  private readonly rows: Int32Array;
  private readonly columns: Int32Array;

  /** @param transition M, row-major */
  constructor(size: number, transition: Float64Array) {
    const a = transition.map((value) => -value);
    for (let k = 0; k < size; k++) a[k * size + k] = 1 + a[k * size + k]!;
    const rows = Int32Array.from({ length: size }, (_, k) => k);
    const columns = Int32Array.from(rows);
    let rank = size;
    for (let k = 0; k < size; k++) {
      let [best, row, column] = [0, k, k];
      for (let i = k; i < size; i++) {
        for (let j = k; j < size; j++) {
          const candidate = Math.abs(a[i * size + j]!);
          if (candidate > best) [best, row, column] = [candidate, i, j];
        }
      }
      if (!(best > LEAST_PIVOT)) {
        rank = k;
        break;
      }
      for (let j = 0; row !== k && j < size; j++) swap(a, k * size + j, row * size + j);
      for (let i = 0; column !== k && i < size; i++) swap(a, i * size + k, i * size + column);
      swap(rows, k, row);
      swap(columns, k, column);
      for (let i = k + 1; i < size; i++) {
        const factor = a[i * size + k]! / a[k * size + k]!;
        a[i * size + k] = factor;
        if (factor !== 0) for (let j = k + 1; j < size; j++) a[i * size + j] = a[i * size + j]! - factor * a[k * size + j]!;
      }
    }
    this.size = size;
    this.rank = rank;
    this.factors = a;
    this.rows = rows;
    this.columns = columns;
  }

  /** Shift of the stores at the start of the period that makes up for what the period adds to them. */
  solve(residual: Float64Array): Float64Array {
    const { size, rank, factors } = this;
    const reduced = new Float64Array(rank);
    for (let i = 0; i < rank; i++) {
      let sum = residual[this.rows[i]!]!;
      for (let j = 0; j < i; j++) sum -= factors[i * size + j]! * reduced[j]!;
      reduced[i] = sum;
    }
    const solution = new Float64Array(size);
    for (let i = rank - 1; i >= 0; i--) {
      let sum = reduced[i]!;
      for (let j = i + 1; j < rank; j++) sum -= factors[i * size + j]! * reduced[j]!;
      reduced[i] = sum / factors[i * size + i]!;
      solution[this.columns[i]!] = reduced[i]!;
    }
    return solution;
  }
}

function swap(array: Float64Array | Int32Array, a: number, b: number): void {
  const held = array[a]!;
  array[a] = array[b]!;
  array[b] = held;
}
