/** Small dense linear algebra for the settling and the Thevenin resistances. */

/** Solves a x = b for each column of b, in place; partial pivoting. Throws when the matrix is singular. */
export function solveDense(a: Float64Array[], b: Float64Array[]): Float64Array[] {
  const n = a.length;
  const rows: Float64Array[] = a.map((row) => Float64Array.from(row));
  const right: Float64Array[] = b.map((row) => Float64Array.from(row));
  for (let k = 0; k < n; k += 1) {
    let best = k;
    for (let i = k + 1; i < n; i += 1) if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[best]?.[k] ?? 0)) best = i;
    [rows[k], rows[best]] = [rows[best] as Float64Array, rows[k] as Float64Array];
    [right[k], right[best]] = [right[best] as Float64Array, right[k] as Float64Array];
    const [row, pivotRight] = [rows[k] as Float64Array, right[k] as Float64Array];
    const pivot = row[k] ?? 0;
    if (!(Math.abs(pivot) > 0)) throw new Error("singular matrix");
    for (let i = 0; i < n; i += 1) {
      if (i === k) continue;
      const [other, otherRight] = [rows[i] as Float64Array, right[i] as Float64Array];
      const factor = (other[k] ?? 0) / pivot;
      if (factor === 0) continue;
      for (let j = k; j < n; j += 1) other[j] = (other[j] ?? 0) - factor * (row[j] ?? 0);
      for (let j = 0; j < otherRight.length; j += 1) otherRight[j] = (otherRight[j] ?? 0) - factor * (pivotRight[j] ?? 0);
    }
  }
  return right.map((row, i) => row.map((value) => value / (rows[i]?.[i] ?? 1)));
}
