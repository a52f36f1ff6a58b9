import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { invertSymmetric } from "./symmetric.ts";

describe("invertSymmetric", () => {
  it("by hand: [[4, 2], [2, 3]] has determinant 8", () => {
    const { inverse, logDeterminant } = invertSymmetric(Float64Array.of(4, 2, 2, 3), 2);
    for (const [k, value] of [3 / 8, -2 / 8, -2 / 8, 4 / 8].entries()) expect(inverse[k]).toBeCloseTo(value, 12);
    expect(logDeterminant).toBeCloseTo(Math.log(8), 12);
  });

  it("gives back the identity, and the product of the diagonal factors as determinant", () => {
    const size = 5;
    // L L^T with a known triangle L: its determinant is the square of the product of L's diagonal.
    const triangles = fc.tuple(
      fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: size * size, maxLength: size * size }),
      fc.array(fc.double({ min: 0.5, max: 3, noNaN: true }), { minLength: size, maxLength: size }),
    );
    fc.assert(
      fc.property(triangles, ([below, diagonal]) => {
        const l = (i: number, j: number) => (j > i ? 0 : i === j ? diagonal[i]! : below[i * size + j]!);
        const matrix = Float64Array.from({ length: size * size }, (_, at) => {
          let sum = 0;
          for (let k = 0; k < size; k += 1) sum += l(Math.floor(at / size), k) * l(at % size, k);
          return sum;
        });
        const { inverse, logDeterminant } = invertSymmetric(matrix, size);
        expect(logDeterminant).toBeCloseTo(2 * diagonal.reduce((sum, d) => sum + Math.log(d), 0), 7);
        // Rounding grows with the size of the inverse.
        const scale = Math.max(1, ...inverse.map(Math.abs));
        for (let i = 0; i < size; i += 1)
          for (let j = 0; j < size; j += 1) {
            let sum = 0;
            for (let k = 0; k < size; k += 1) sum += matrix[i * size + k]! * inverse[k * size + j]!;
            expect(Math.abs(sum - (i === j ? 1 : 0))).toBeLessThan(1e-11 * scale);
          }
      }),
      { numRuns: 60 },
    );
  });

  it("stays finite where one row says what another says", () => {
    const { inverse, logDeterminant } = invertSymmetric(Float64Array.of(1, 1, 1, 1), 2);
    expect([...inverse, logDeterminant].every(Number.isFinite)).toBe(true);
  });
});
