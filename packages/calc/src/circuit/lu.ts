/** Dense LU factors of a square matrix with row exchanges, on typed arrays. */
export interface LuFactors {
  size: number;
  /** Row-major; unit lower triangle and upper triangle in one array. */
  factors: Float64Array;
  /** Row order found by pivoting. */
  order: Int32Array;
  /** Column whose pivot vanished against the scale of its row, or -1 when the matrix is regular. */
  singularColumn: number;
}

/** A pivot smaller than this share of its row's largest entry counts as zero. */
const RELATIVE_PIVOT = 1e-13;

/**
 * Factors a matrix in place, with scaled partial pivoting: each row is judged against its own largest entry, since rows
 * in siemens, ohms and turns stand side by side.
 *
 * @param size order of the matrix
 * @param matrix row-major entries, overwritten by the factors
 * @returns the factors; `singularColumn` >= 0 says that the rest is not usable
 */
export function factorize(size: number, matrix: Float64Array): LuFactors {
  const order = new Int32Array(size);
  const scale = new Float64Array(size);
  for (let row = 0; row < size; row++) {
    order[row] = row;
    let largest = 0;
    for (let column = 0; column < size; column++) {
      const entry = Math.abs(matrix[row * size + column]!);
      if (entry > largest) largest = entry;
    }
    scale[row] = largest > 0 ? 1 / largest : 0;
  }
  for (let k = 0; k < size; k++) {
    let best = -1;
    let pivotRow = k;
    for (let row = k; row < size; row++) {
      const candidate = Math.abs(matrix[row * size + k]!) * scale[row]!;
      if (candidate > best) {
        best = candidate;
        pivotRow = row;
      }
    }
    if (!(best > RELATIVE_PIVOT)) return { size, factors: matrix, order, singularColumn: k };
    if (pivotRow !== k) exchangeRows(size, matrix, order, scale, k, pivotRow);
    const pivot = 1 / matrix[k * size + k]!;
    for (let row = k + 1; row < size; row++) {
      const entry = matrix[row * size + k]!;
      if (entry === 0) continue;
      const factor = entry * pivot;
      matrix[row * size + k] = factor;
      for (let column = k + 1; column < size; column++) {
        matrix[row * size + column] = matrix[row * size + column]! - factor * matrix[k * size + column]!;
      }
    }
  }
  return { size, factors: matrix, order, singularColumn: -1 };
}

function exchangeRows(size: number, matrix: Float64Array, order: Int32Array, scale: Float64Array, a: number, b: number): void {
  for (let column = 0; column < size; column++) {
    const held = matrix[a * size + column]!;
    matrix[a * size + column] = matrix[b * size + column]!;
    matrix[b * size + column] = held;
  }
  const heldOrder = order[a]!;
  order[a] = order[b]!;
  order[b] = heldOrder;
  const heldScale = scale[a]!;
  scale[a] = scale[b]!;
  scale[b] = heldScale;
}

/**
 * Solves with factors from `factorize`.
 *
 * @param rightSide left unchanged
 * @param solution receives the result; must not be the same array as `rightSide`
 */
export function solveFactored(lu: LuFactors, rightSide: Float64Array, solution: Float64Array): void {
  const { size, factors, order } = lu;
  for (let row = 0; row < size; row++) {
    let sum = rightSide[order[row]!]!;
    const base = row * size;
    for (let column = 0; column < row; column++) sum -= factors[base + column]! * solution[column]!;
    solution[row] = sum;
  }
  for (let row = size - 1; row >= 0; row--) {
    let sum = solution[row]!;
    const base = row * size;
    for (let column = row + 1; column < size; column++) sum -= factors[base + column]! * solution[column]!;
    solution[row] = sum / factors[base + row]!;
  }
}
