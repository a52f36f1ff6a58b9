import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groundOf, observableAt } from "../testing/suspectChassis.ts";
import { Curve } from "./curve.ts";
import type { Family } from "./family.ts";
import { Likelihood } from "./likelihood.ts";
import { judgeRange, retraced } from "./ranges.ts";

const family: Family = { base: { part: "R1", element: "R1", parameter: "ohms", nominal: 10e3 }, by: "value", nodes: [], members: [] };
const RANGE = [100, 1e6] as const;
const PRIOR = 0.03;

/** 100 V through 10 kohm into the value. */
const divider = (ohms: number) => Float64Array.of(100 / (1 + 10e3 / ohms));
const NODES = [100, 1e3, 3e3, 1e4, 3e4, 1e5, 1e6];
const curve = new Curve(NODES, NODES.map(divider));
const readingOf = (value: number) =>
  new Likelihood(groundOf([{ observable: observableAt("dc-volts", "b"), nominal: 50 }]), [{ index: 0, value }]);

/** ln of the mean likelihood over the range, by ten thousand values even in the logarithm. */
function dense(likelihood: Likelihood, by: Curve): number {
  const steps = 10_000;
  let sum = 0;
  for (let k = 0; k < steps; k += 1)
    sum += Math.exp(likelihood.fit(by.at(RANGE[0] * (RANGE[1] / RANGE[0]) ** ((k + 0.5) / steps))).logLikelihood);
  return Math.log(sum / steps);
}

describe("judgeRange", () => {
  it("a peak narrower than the grid weighs its height times its width, whether a value of the grid hits it or none", () => {
    // About 0.5 V of spread on 25 V a natural logarithm: a twentieth of the grid's step of ln(10^4) / 24.
    for (const ohms of [1e3, 4e3, 8181, 9e3, 11e3, 11979, 25e3, 6e4]) {
      const likelihood = readingOf(divider(ohms)[0]!);
      const judged = judgeRange(family, "wrong-value", RANGE, PRIOR, curve, likelihood, 0);
      // The floor that slips put under the peak, which height times width leaves out, is a hundredth of it here.
      expect(Math.abs(judged.logWeight - Math.log(PRIOR) - dense(likelihood, curve)), `${ohms}`).toBeLessThan(0.03);
      // Half a volt of spread is 2 % of the value.
      expect(Math.abs(Math.log(judged.edit.value! / ohms)), `${ohms}`).toBeLessThan(0.02);
    }
  });

  it("the values that it keeps hold most of a narrow peak: two standard deviations to either side", () => {
    const { low, high, edit } = judgeRange(family, "wrong-value", RANGE, PRIOR, curve, readingOf(divider(9e3)[0]!), 0);
    const likelihood = readingOf(divider(9e3)[0]!);
    const best = likelihood.fit(curve.at(edit.value!)).logLikelihood;
    // Two standard deviations are two below in the logarithm; the spread itself changes along the peak.
    for (const end of [low!, high!]) expect(Math.abs(best - likelihood.fit(curve.at(end)).logLikelihood - 2)).toBeLessThan(0.25);
    expect(low).toBeLessThan(9e3);
    expect(high).toBeGreaterThan(9e3);
  });

  it("a peak beyond an end weighs what of it lies within", () => {
    // 1 V at the low end; 0 V is beyond it.
    const likelihood = readingOf(0.5);
    const judged = judgeRange(family, "wrong-value", RANGE, PRIOR, curve, likelihood, 0);
    expect(Math.abs(judged.logWeight - Math.log(PRIOR) - dense(likelihood, curve))).toBeLessThan(0.03);
  });

  it.each([
    ["wide", 0.5],
    ["of a step of the grid", 0.16],
    ["between two values of the grid", 0.02],
    ["needle-sharp", 0.002],
  ])("integrates a normal peak that is %s", (_, width) => {
    // A curve that hands the value itself to the likelihood.
    const own = Array.from({ length: 400 }, (__, k) => 10 ** (1 + (4 * k) / 399));
    const identity = new Curve(
      own,
      own.map((value) => Float64Array.of(Math.log(value))),
    );
    const fit = ([x]: Float64Array) => ({
      logLikelihood: -0.5 * ((x! - Math.log(777)) / width) ** 2,
      deviations: new Float64Array(1),
      squares: 0,
    });
    const { logWeight, edit } = judgeRange(family, "drift-low", [50, 5000], PRIOR, identity, { fit } as unknown as Likelihood, 0);
    // All of it lies within the range, but for 0.0002 of the widest.
    const area = (width * Math.sqrt(2 * Math.PI)) / Math.log(100);
    // A peak as wide as a step is the worst, where both ways of adding up are rough: exp(-2 pi^2 0.4^2) twice over is 8 %.
    expect(Math.abs(logWeight - Math.log(PRIOR * area))).toBeLessThan(0.09);
    expect(Math.abs(Math.log(edit.value! / 777))).toBeLessThan(0.01);
  });

  it("a wide peak weighs its mean over the range", () => {
    const bent = new Curve(RANGE, [Float64Array.of(49.5), Float64Array.of(50.5)]);
    const judged = judgeRange(family, "wrong-value", RANGE, PRIOR, bent, readingOf(50), 0);
    // The midpoint rule with 24 values of a smooth curve.
    expect(judged.logWeight - Math.log(PRIOR)).toBeCloseTo(dense(readingOf(50), bent), 3);
  });

  it("what no reading shows keeps its prior, and any value", () => {
    const flat = new Curve(RANGE, [Float64Array.of(50), Float64Array.of(50)]);
    const likelihood = readingOf(51);
    const judged = judgeRange(family, "wrong-value", RANGE, PRIOR, flat, likelihood, 0);
    expect(judged.logWeight).toBeCloseTo(Math.log(PRIOR) + likelihood.fit(Float64Array.of(50)).logLikelihood, 9);
    // The ends of the grid's outermost cells: half a step of ln(10^4) / 24 from those of the range.
    expect(Math.log(judged.low! / RANGE[0])).toBeLessThan(0.2);
    expect(Math.log(RANGE[1] / judged.high!)).toBeLessThan(0.2);
  });

  it("estimates a value within the range, whatever is read", () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 300, noNaN: true }), (value) => {
        const { edit, fault, low, high, range } = judgeRange(family, "drift-high", RANGE, PRIOR, curve, readingOf(value), 0);
        expect(edit.value).toBeGreaterThanOrEqual(RANGE[0]);
        expect(edit.value).toBeLessThanOrEqual(RANGE[1]);
        expect(low).toBeLessThanOrEqual(edit.value!);
        expect(high).toBeGreaterThanOrEqual(edit.value!);
        expect({ kind: fault.kind, value: fault.value, range }).toEqual({ kind: "drift-high", value: edit.value, range: RANGE });
      }),
      { numRuns: 50 },
    );
  });
});

describe("retraced", () => {
  const likelihood = readingOf(divider(11e3)[0]!);
  // A first look that reads 2 V too much, so that it finds too low a value.
  const off = new Curve(
    NODES,
    NODES.map((ohms) => divider(ohms).map((value) => value + 2)),
  );
  const judged = judgeRange(family, "wrong-value", RANGE, PRIOR, off, likelihood, 0);

  it("mends a value found with few steps, and the weight by what the fit gains", () => {
    expect(judged.edit.value! / 11e3).toBeLessThan(0.95);
    const mended = retraced(judged, ({ value }) => divider(value!), likelihood, {})!;
    // Golden section over a factor of 1.44 in twelve steps: 0.1 %; the reading hangs on it by the meter's spread alone.
    expect(mended.edit.value! / 11e3).toBeCloseTo(1, 2);
    expect(mended.fault.value).toBe(mended.edit.value);
    expect([mended.low! < mended.edit.value!, mended.high! > mended.edit.value!]).toEqual([true, true]);
    expect(mended.logWeight - judged.logWeight).toBeCloseTo(mended.fit.logLikelihood - judged.fit.logLikelihood, 12);
  });

  it("leaves alone what has no value, or cannot be simulated", () => {
    const { range: _, ...single } = judged;
    expect(retraced(single, ({ value }) => divider(value!), likelihood, {})).toBeUndefined();
    expect(retraced(judged, () => undefined, likelihood, {})).toBeUndefined();
  });
});
