import type { PairColumn, Plant } from "./plant.ts";
import type { SparseSum } from "./sparse-sum.ts";

/** A column of the inverse of the base at one frequency: the real part of its value in a row; see `imOf`. */
export function reOf(column: PairColumn, size: number, place: number, row: number): number {
  if (row < 0) return 0;
  if (row < size) return column.base === undefined ? 0 : column.base[2 * (place * size + row)]!;
  return (row === column.plus ? 1 : 0) - (row === column.minus ? 1 : 0);
}

export function imOf(column: PairColumn, size: number, place: number, row: number): number {
  if (row < 0 || row >= size || column.base === undefined) return 0;
  return column.base[2 * (place * size + row) + 1]!;
}

/**
 * The inverse of a matrix that differs from the base's in a few rows R (Woodbury's identity): with D the difference and P the
 * base's inverse, both on R, the solution x of the base becomes x - columns(R) y, y = (1 + D P)^-1 D x(R).
 */
export class RankUpdate {
  /** Rows in which the matrices differ. */
  readonly rows: Int32Array;
  readonly columns: readonly PairColumn[];
  /** Whether the changed matrix is regular at every frequency. */
  readonly regular: boolean;
  private readonly size: number;
  /** (1 + D P)^-1 D, [place][row][column], interleaved. */
  private readonly gains: Float64Array;

  constructor(plant: Plant, conductances: SparseSum, stores: SparseSum, size: number) {
    const index = new Map<number, number>();
    const note = (row: number): number => {
      let at = index.get(row);
      if (at === undefined) {
        at = index.size;
        index.set(row, at);
      }
      return at;
    };
    const entries: [row: number, column: number, siemens: number, store: number][] = [];
    conductances.forEach((row, column, value) => {
      entries.push([note(row), note(column), value, 0]);
    });
    stores.forEach((row, column, value) => {
      entries.push([note(row), note(column), 0, value]);
    });
    const base = plant.circuit.size;
    // In the base a new row stands for itself: 1 on its diagonal.
    for (let row = base; row < size; row++) {
      const at = note(row);
      entries.push([at, at, -1, 0]);
    }
    const k = index.size;
    const { places } = plant.factors;
    const { re, im } = plant.symbol;
    this.size = base;
    this.rows = Int32Array.from(index.keys());
    this.columns = Array.from(this.rows, (row) => plant.pair(row, -1));
    this.gains = new Float64Array(2 * k * k * places);
    const difference = new Float64Array(2 * k * k);
    const matrix = new Float64Array(2 * k * k);
    let regular = true;
    for (let place = 0; place < places; place++) {
      difference.fill(0);
      for (const [row, column, siemens, store] of entries) {
        const at = 2 * (row * k + column);
        difference[at] = difference[at]! + siemens + re[place]! * store;
        difference[at + 1] = difference[at + 1]! + im[place]! * store;
      }
      matrix.fill(0);
      for (let j = 0; j < k; j++) {
        const column = this.columns[j]!;
        for (let m = 0; m < k; m++) {
          const row = this.rows[m]!;
          const [pr, pi] = [reOf(column, base, place, row), imOf(column, base, place, row)];
          if (pr === 0 && pi === 0) continue;
          for (let i = 0; i < k; i++) {
            const [dr, di] = [difference[2 * (i * k + m)]!, difference[2 * (i * k + m) + 1]!];
            const at = 2 * (i * k + j);
            matrix[at] = matrix[at]! + dr * pr - di * pi;
            matrix[at + 1] = matrix[at + 1]! + dr * pi + di * pr;
          }
        }
      }
      for (let i = 0; i < k; i++) matrix[2 * (i * k + i)] = matrix[2 * (i * k + i)]! + 1;
      if (!eliminate(k, matrix, difference)) regular = false;
      this.gains.set(difference, 2 * k * k * place);
    }
    this.regular = regular;
  }

  /** y for a solution of the base with the values `values` on the rows; interleaved, written to `out` from `at` on. */
  shift(place: number, values: Float64Array, out: Float64Array, at: number): void {
    const k = this.rows.length;
    const origin = 2 * k * k * place;
    for (let i = 0; i < k; i++) {
      let re = 0;
      let im = 0;
      for (let j = 0; j < k; j++) {
        const g = origin + 2 * (i * k + j);
        re += this.gains[g]! * values[2 * j]! - this.gains[g + 1]! * values[2 * j + 1]!;
        im += this.gains[g]! * values[2 * j + 1]! + this.gains[g + 1]! * values[2 * j]!;
      }
      out[at + 2 * i] = re;
      out[at + 2 * i + 1] = im;
    }
  }

  /** Values of a column of the base on the rows, interleaved. */
  gather(column: PairColumn, place: number, out: Float64Array): void {
    for (let j = 0; j < this.rows.length; j++) {
      out[2 * j] = reOf(column, this.size, place, this.rows[j]!);
      out[2 * j + 1] = imOf(column, this.size, place, this.rows[j]!);
    }
  }
}

/** Solves matrix x = right in place, complex and square, with partial pivoting; false when it is singular. */
function eliminate(size: number, matrix: Float64Array, right: Float64Array): boolean {
  for (let k = 0; k < size; k++) {
    let row = k;
    let best = 0;
    for (let i = k; i < size; i++) {
      const at = 2 * (i * size + k);
      const value = Math.abs(matrix[at]!) + Math.abs(matrix[at + 1]!);
      if (value > best) [best, row] = [value, i];
    }
    if (!(best > 1e-300)) return false;
    if (row !== k) {
      for (let j = 0; j < 2 * size; j++) {
        const [a, b] = [2 * k * size + j, 2 * row * size + j];
        let held = matrix[a]!;
        matrix[a] = matrix[b]!;
        matrix[b] = held;
        held = right[a]!;
        right[a] = right[b]!;
        right[b] = held;
      }
    }
    const [pr, pi] = [matrix[2 * (k * size + k)]!, matrix[2 * (k * size + k) + 1]!];
    const square = pr * pr + pi * pi;
    const [ir, ii] = [pr / square, -pi / square];
    scaleRow(matrix, 2 * k * size, size, ir, ii);
    scaleRow(right, 2 * k * size, size, ir, ii);
    for (let i = 0; i < size; i++) {
      if (i === k) continue;
      const [fr, fi] = [matrix[2 * (i * size + k)]!, matrix[2 * (i * size + k) + 1]!];
      if (fr === 0 && fi === 0) continue;
      addRow(matrix, 2 * i * size, 2 * k * size, size, fr, fi);
      addRow(right, 2 * i * size, 2 * k * size, size, fr, fi);
    }
  }
  return true;
}

function scaleRow(a: Float64Array, at: number, size: number, re: number, im: number): void {
  for (let j = at; j < at + 2 * size; j += 2) {
    const [r, i] = [a[j]!, a[j + 1]!];
    a[j] = r * re - i * im;
    a[j + 1] = r * im + i * re;
  }
}

/** Row at `to` less (re + i im) times the row at `from`. */
function addRow(a: Float64Array, to: number, from: number, size: number, re: number, im: number): void {
  for (let j = 0; j < 2 * size; j += 2) {
    const [r, i] = [a[from + j]!, a[from + j + 1]!];
    a[to + j] = a[to + j]! - r * re + i * im;
    a[to + j + 1] = a[to + j + 1]! - r * im - i * re;
  }
}
