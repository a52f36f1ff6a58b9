import { describe, expect, it } from "vitest";
import { PeriodicFactors } from "./periodic-factors.ts";

describe("PeriodicFactors", () => {
  it("solves (I - M) x = r", () => {
    // x = (3, -2): (1 - 0.5) 3 - 0.1 (-2) = 1.7; -0.2 * 3 + (1 - 0.9)(-2) = -0.8.
    const solution = new PeriodicFactors(2, Float64Array.of(0.5, 0.1, 0.2, 0.9)).solve(Float64Array.of(1.7, -0.8));
    expect(solution[0]).toBeCloseTo(3, 12);
    expect(solution[1]).toBeCloseTo(-2, 12);
  });

  it("leaves a direction that the period does not change where it is", () => {
    // M = I - u w': one combination of the two returns unchanged.
    const factors = new PeriodicFactors(2, Float64Array.of(0.9, -0.1, -0.2, 0.8));
    expect(factors.rank).toBe(1);
    const solution = factors.solve(Float64Array.of(0.3, 0.6));
    expect(0.1 * solution[0]! + 0.1 * solution[1]!).toBeCloseTo(0.3, 12);
    expect(Math.min(Math.abs(solution[0]!), Math.abs(solution[1]!))).toBe(0);
  });
});
