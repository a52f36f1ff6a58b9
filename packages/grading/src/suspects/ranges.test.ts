import { describe, expect, it } from "vitest";
import { Curve } from "./curve.ts";
import type { Family } from "./family.ts";
import type { Likelihood } from "./likelihood.ts";
import { judgeRange } from "./ranges.ts";

const family: Family = { base: { part: "R1", element: "R1", parameter: "ohms", nominal: 1000 }, by: "value", nodes: [], members: [] };
/** A curve that hands the value itself to the likelihood. */
const values = Array.from({ length: 400 }, (_, k) => 10 ** (1 + (4 * k) / 399));
const curve = new Curve(
  values,
  values.map((value) => Float64Array.of(Math.log(value))),
);
const likelihoodOf = (of: (logValue: number) => number) =>
  ({
    fit: (predicted: Float64Array) => ({ logLikelihood: of(predicted[0] ?? 0), deviations: new Float64Array(1), squares: 0 }),
  }) as unknown as Likelihood;

/** Mean of the likelihood over the logarithm of the value, by a fine sum. */
function integral(of: (logValue: number) => number, low: number, high: number): number {
  let sum = 0;
  const steps = 200_000;
  for (let k = 0; k < steps; k += 1) sum += Math.exp(of(Math.log(low) + (Math.log(high / low) * (k + 0.5)) / steps));
  return sum / steps;
}

describe("judgeRange", () => {
  it.each([
    ["wide", 0.5],
    ["between two values of the grid", 0.02],
    ["needle-sharp", 0.002],
  ])("integrates a peak that is %s", (_, width) => {
    const peak = (x: number) => -0.5 * ((x - Math.log(777)) / width) ** 2;
    const { logWeight, edit } = judgeRange(family, "drift-low", [50, 5000], 0.3, curve, likelihoodOf(peak), 0);
    expect(edit.value).toBeGreaterThan(777 * 0.99);
    expect(edit.value).toBeLessThan(777 * 1.01);
    // The grid has 24 values; a peak of one step's width is the worst that lies between both ways of adding up.
    expect(Math.exp(logWeight) / (0.3 * integral(peak, 50, 5000))).toBeGreaterThan(0.8);
    expect(Math.exp(logWeight) / (0.3 * integral(peak, 50, 5000))).toBeLessThan(1.3);
  });

  it("gives back the prior where the readings say nothing, and the whole range as possible", () => {
    const judged = judgeRange(
      family,
      "drift-low",
      [50, 5000],
      0.3,
      curve,
      likelihoodOf(() => 0),
      0,
    );
    expect(judged.logWeight).toBeCloseTo(Math.log(0.3), 9);
    expect(judged.low).toBeLessThan(60);
    expect(judged.high).toBeGreaterThan(4000);
  });

  it("never leaves its range", () => {
    const { edit } = judgeRange(
      family,
      "drift-low",
      [50, 5000],
      0.3,
      curve,
      likelihoodOf((x) => x),
      0,
    );
    expect(edit.value).toBeLessThanOrEqual(5000);
  });
});
