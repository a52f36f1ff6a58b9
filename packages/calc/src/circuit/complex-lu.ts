/** Complex number as a pair. */
export interface Complex {
  re: number;
  im: number;
}

/**
 * Solves a dense complex system by elimination with partial pivoting, in place.
 *
 * @param matrix row-major, real and imaginary parts interleaved; destroyed
 * @param rightSides row-major [row][column], interleaved; overwritten with the solutions
 * @returns the column whose pivot vanished, or -1
 */
export function solveComplex(size: number, matrix: Float64Array, rightSides: Float64Array, columns: number): number {
  for (let k = 0; k < size; k++) {
    let row = k;
    let best = 0;
    for (let i = k; i < size; i++) {
      const candidate = Math.hypot(matrix[2 * (i * size + k)]!, matrix[2 * (i * size + k) + 1]!);
      if (candidate > best) {
        best = candidate;
        row = i;
      }
    }
    if (!(best > 1e-300)) return k;
    if (row !== k) {
      exchange(matrix, 2 * size, k, row);
      exchange(rightSides, 2 * columns, k, row);
    }
    const pr = matrix[2 * (k * size + k)]! / best / best;
    const pi = -matrix[2 * (k * size + k) + 1]! / best / best;
    for (let i = k + 1; i < size; i++) {
      const ar = matrix[2 * (i * size + k)]!;
      const ai = matrix[2 * (i * size + k) + 1]!;
      if (ar === 0 && ai === 0) continue;
      const fr = ar * pr - ai * pi;
      const fi = ar * pi + ai * pr;
      subtract(matrix, 2 * i * size, 2 * k * size, k + 1, size, fr, fi);
      subtract(rightSides, 2 * i * columns, 2 * k * columns, 0, columns, fr, fi);
    }
  }
  for (let k = size - 1; k >= 0; k--) {
    for (let j = k + 1; j < size; j++) {
      subtract(rightSides, 2 * k * columns, 2 * j * columns, 0, columns, matrix[2 * (k * size + j)]!, matrix[2 * (k * size + j) + 1]!);
    }
    const dr = matrix[2 * (k * size + k)]!;
    const di = matrix[2 * (k * size + k) + 1]!;
    const norm = dr * dr + di * di;
    for (let c = 0; c < columns; c++) {
      const at = 2 * (k * columns + c);
      const re = rightSides[at]!;
      const im = rightSides[at + 1]!;
      rightSides[at] = (re * dr + im * di) / norm;
      rightSides[at + 1] = (im * dr - re * di) / norm;
    }
  }
  return -1;
}

function exchange(array: Float64Array, width: number, a: number, b: number): void {
  for (let k = 0; k < width; k++) {
    const held = array[a * width + k]!;
    array[a * width + k] = array[b * width + k]!;
    array[b * width + k] = held;
  }
}

/** row at `into` -= (fr + i fi) * row at `from`, over columns from..to. */
function subtract(array: Float64Array, into: number, from: number, first: number, end: number, fr: number, fi: number): void {
  for (let c = first; c < end; c++) {
    const re = array[from + 2 * c]!;
    const im = array[from + 2 * c + 1]!;
    array[into + 2 * c] = array[into + 2 * c]! - (fr * re - fi * im);
    array[into + 2 * c + 1] = array[into + 2 * c + 1]! - (fr * im + fi * re);
  }
}
