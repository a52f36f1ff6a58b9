import { describe, expect, it } from "vitest";
import { factorize, solveFactored } from "./lu.ts";
import { factorizeSmall, solveSmall } from "./small-lu.ts";

// Solution by hand: x = (1, -2, 3) put into three equations that need row exchanges (zero leading entry).
const MATRIX = [0, 2, 1, 3, -1, 2, 1, 1, 1];
const RIGHT = [-1, 11, 2];
const EXPECTED = [1, -2, 3];

describe("factorize", () => {
  it("solves a system that needs row exchanges", () => {
    const lu = factorize(3, Float64Array.from(MATRIX));
    const solution = new Float64Array(3);
    solveFactored(lu, Float64Array.from(RIGHT), solution);
    for (const [k, value] of EXPECTED.entries()) expect(solution[k]).toBeCloseTo(value, 12);
  });

  it("solves rows of very different scale", () => {
    // x = (2, 3): 1e-9 x + 1e-9 y = 5e-9 and 1e6 x - 1e6 y = -1e6.
    const lu = factorize(2, Float64Array.of(1e-9, 1e-9, 1e6, -1e6));
    const solution = new Float64Array(2);
    solveFactored(lu, Float64Array.of(5e-9, -1e6), solution);
    expect(solution[0]).toBeCloseTo(2, 10);
    expect(solution[1]).toBeCloseTo(3, 10);
  });

  it("names the column of a dependent equation", () => {
    expect(factorize(2, Float64Array.of(1e6, 2e6, 1e-6, 2e-6)).singularColumn).toBe(1);
  });
});

describe("solveSmall", () => {
  it("agrees with the large solver for one and for several right sides", () => {
    const a = Float64Array.from(MATRIX);
    const pivots = new Int32Array(3);
    expect(factorizeSmall(3, a, pivots)).toBe(true);
    const one = Float64Array.from(RIGHT);
    solveSmall(3, a, pivots, one, 1);
    for (const [k, value] of EXPECTED.entries()) expect(one[k]).toBeCloseTo(value, 12);
    const two = Float64Array.from(RIGHT.flatMap((value) => [value, 2 * value]));
    solveSmall(3, a, pivots, two, 2);
    EXPECTED.forEach((value, k) => {
      expect(two[2 * k]).toBeCloseTo(value, 12);
      expect(two[2 * k + 1]).toBeCloseTo(2 * value, 12);
    });
  });
});
