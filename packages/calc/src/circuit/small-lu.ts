/**
 * In-place LU with partial pivoting for the small matrices of the port equations, without allocation.
 *
 * @param pivots receives the row exchanged with each column
 * @returns false when a pivot vanished
 */
export function factorizeSmall(size: number, a: Float64Array, pivots: Int32Array): boolean {
  for (let k = 0; k < size; k++) {
    let row = k;
    let best = Math.abs(a[k * size + k]!);
    for (let i = k + 1; i < size; i++) {
      const candidate = Math.abs(a[i * size + k]!);
      if (candidate > best) {
        best = candidate;
        row = i;
      }
    }
    pivots[k] = row;
    if (!(best > 1e-300)) return false;
    if (row !== k) {
      for (let j = 0; j < size; j++) {
        const held = a[k * size + j]!;
        a[k * size + j] = a[row * size + j]!;
        a[row * size + j] = held;
      }
    }
    const inverse = 1 / a[k * size + k]!;
    for (let i = k + 1; i < size; i++) {
      const factor = a[i * size + k]! * inverse;
      a[i * size + k] = factor;
      if (factor === 0) continue;
      for (let j = k + 1; j < size; j++) a[i * size + j] = a[i * size + j]! - factor * a[k * size + j]!;
    }
  }
  return true;
}

/** Solves in place with the factors of `factorizeSmall`; `b` holds `columns` right sides, row-major. */
export function solveSmall(size: number, a: Float64Array, pivots: Int32Array, b: Float64Array, columns: number): void {
  if (columns === 1) {
    solveSingle(size, a, pivots, b);
    return;
  }
  for (let k = 0; k < size; k++) {
    const row = pivots[k]!;
    if (row === k) continue;
    for (let c = 0; c < columns; c++) {
      const held = b[k * columns + c]!;
      b[k * columns + c] = b[row * columns + c]!;
      b[row * columns + c] = held;
    }
  }
  for (let i = 1; i < size; i++) {
    for (let j = 0; j < i; j++) {
      const factor = a[i * size + j]!;
      if (factor === 0) continue;
      for (let c = 0; c < columns; c++) b[i * columns + c] = b[i * columns + c]! - factor * b[j * columns + c]!;
    }
  }
  for (let i = size - 1; i >= 0; i--) {
    const inverse = 1 / a[i * size + i]!;
    for (let c = 0; c < columns; c++) {
      let sum = b[i * columns + c]!;
      for (let j = i + 1; j < size; j++) sum -= a[i * size + j]! * b[j * columns + c]!;
      b[i * columns + c] = sum * inverse;
    }
  }
}

function solveSingle(size: number, a: Float64Array, pivots: Int32Array, b: Float64Array): void {
  for (let k = 0; k < size; k++) {
    const row = pivots[k]!;
    if (row === k) continue;
    const held = b[k]!;
    b[k] = b[row]!;
    b[row] = held;
  }
  for (let i = 1; i < size; i++) {
    let sum = b[i]!;
    for (let j = 0; j < i; j++) sum -= a[i * size + j]! * b[j]!;
    b[i] = sum;
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = b[i]!;
    for (let j = i + 1; j < size; j++) sum -= a[i * size + j]! * b[j]!;
    b[i] = sum / a[i * size + i]!;
  }
}
