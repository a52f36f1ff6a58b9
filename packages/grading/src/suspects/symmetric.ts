/** Inverse and log determinant of a symmetric positive matrix by Cholesky's factors. */
export function invertSymmetric(matrix: Float64Array, n: number): { inverse: Float64Array; logDeterminant: number } {
  const l = new Float64Array(n * n);
  let logDeterminant = 0;
  for (let j = 0; j < n; j += 1) {
    let d = matrix[j * n + j]!;
    for (let k = 0; k < j; k += 1) d -= l[j * n + k]! ** 2;
    // Rounding may leave nothing of a row that others determine.
    d = Math.max(d, 1e-12 * matrix[j * n + j]!);
    logDeterminant += Math.log(d);
    const root = Math.sqrt(d);
    l[j * n + j] = root;
    for (let i = j + 1; i < n; i += 1) {
      let sum = matrix[i * n + j]!;
      for (let k = 0; k < j; k += 1) sum -= l[i * n + k]! * l[j * n + k]!;
      l[i * n + j] = sum / root;
    }
  }
  const inverse = new Float64Array(n * n);
  const column = new Float64Array(n);
  for (let c = 0; c < n; c += 1) {
    column.fill(0);
    column[c] = 1;
    for (let i = 0; i < n; i += 1) {
      let sum = column[i]!;
      for (let k = 0; k < i; k += 1) sum -= l[i * n + k]! * column[k]!;
      column[i] = sum / l[i * n + i]!;
    }
    for (let i = n - 1; i >= 0; i -= 1) {
      let sum = column[i]!;
      for (let k = i + 1; k < n; k += 1) sum -= l[k * n + i]! * column[k]!;
      column[i] = sum / l[i * n + i]!;
    }
    for (let i = 0; i < n; i += 1) inverse[i * n + c] = column[i]!;
  }
  return { inverse, logDeterminant };
}
