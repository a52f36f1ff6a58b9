import { describe, expect, it } from "vitest";
import { spreadOf } from "./spread.ts";

const part = (name: string, minus: number, plus = minus) => ({ ref: { element: name, parameter: "ohms" }, minus, plus, part: name });

describe("spread of a probe", () => {
  // A uniform distribution of half-width t has the standard deviation t / sqrt(3); independent ones add in squares.
  it("adds independent uniform spreads in squares, and worst cases in sums", () => {
    const spread = spreadOf([part("R1", 0.1), part("R2", 0.2)], [30, -20]);
    expect(spread.sigma).toBeCloseTo(Math.sqrt((3 ** 2 + 4 ** 2) / 3), 12);
    expect(spread.shift).toBe(0);
    // Upwards t, downwards -ln(1 - t), which covers a law of the value and one of its inverse.
    expect(spread.worstUp).toBeCloseTo(30 * 0.1 - 20 * Math.log(1 - 0.2), 12);
    expect(spread.worstDown).toBeCloseTo(-30 * Math.log(1 - 0.1) + 20 * 0.2, 12);
  });

  it("shifts the middle where a tolerance has unequal sides", () => {
    // -10 +50 %: middle +20 %, half-width 30 %.
    const spread = spreadOf([part("C1", 0.1, 0.5)], [10]);
    expect(spread.shift).toBeCloseTo(2, 12);
    expect(spread.sigma).toBeCloseTo(3 / Math.sqrt(3), 12);
    expect(spread.worstUp).toBe(5);
    expect(spread.worstDown).toBeCloseTo(-10 * Math.log(0.9), 12);
    const falling = spreadOf([part("C1", 0.1, 0.5)], [-10]);
    expect([falling.shift, falling.worstDown]).toEqual([-2, 5]);
    expect(falling.worstUp).toBeCloseTo(-10 * Math.log(0.9), 12);
  });

  it("names the five largest contributors by their share of the variance", () => {
    const parts = ["a", "b", "c", "d", "e", "f"].map((name) => part(name, 0.1));
    const { contributors } = spreadOf(parts, [1, 2, 3, 4, 5, 6]);
    expect(contributors.map(({ part: name }) => name)).toEqual(["f", "e", "d", "c", "b"]);
    expect(contributors[0]?.share).toBeCloseTo(36 / 91, 12);
  });

  it("stays finite for a value that may be anything", () => {
    expect(Number.isFinite(spreadOf([part("C1", 1)], [10]).worstDown)).toBe(true);
  });

  it("of nothing is nothing", () => {
    expect(spreadOf([part("R1", 0.1)], [0])).toEqual({ sigma: 0, shift: 0, worstDown: 0, worstUp: 0, contributors: [] });
  });
});
