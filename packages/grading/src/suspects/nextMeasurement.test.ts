import { describe, expect, it } from "vitest";
import { groundOf, observableAt } from "../testing/suspectChassis.ts";
import { deviationOf } from "./groups.ts";
import { nextMeasurement } from "./nextMeasurement.ts";

/** One voltage and one cold resistance. */
const ground = groundOf([
  { observable: observableAt("dc-volts", "a"), nominal: 100 },
  { observable: observableAt("ohms", "b"), nominal: 10e3 },
  { observable: observableAt("ripple-volts", "a"), nominal: 100 },
]);
const COLD = Math.log(10e3);
const belief = (weight: number, volts: number, ohms = COLD, ripple = 100) => ({ weight, predicted: Float64Array.of(volts, ohms, ripple) });

/** Mutual information of two equal suspects and a reading, by the midpoint rule. */
function twoEqual(a: number, b: number, sigmas: readonly [number, number]): number {
  const density = (x: number, mean: number, sigma: number) => Math.exp(-0.5 * ((x - mean) / sigma) ** 2) / sigma / Math.sqrt(2 * Math.PI);
  const [from, to] = [Math.min(a, b) - 8 * Math.max(...sigmas), Math.max(a, b) + 8 * Math.max(...sigmas)];
  const steps = 4000;
  let bits = 0;
  for (let k = 0; k < steps; k += 1) {
    const x = from + ((to - from) * (k + 0.5)) / steps;
    const [p, q] = [density(x, a, sigmas[0]), density(x, b, sigmas[1])];
    for (const each of [p, q]) if (each > 0) bits += 0.5 * each * Math.log2((2 * each) / (p + q));
  }
  return (bits * (to - from)) / steps;
}

describe("nextMeasurement", () => {
  it("two equal suspects wide apart are one bit, three are log2 of three", () => {
    // Bins are no finer than a deviation or so, which loses nothing where the suspects are apart.
    expect(nextMeasurement(ground, [belief(0.5, 100), belief(0.5, 20)], [0], false)?.bits).toBeCloseTo(1, 3);
    expect(nextMeasurement(ground, [belief(1, 100), belief(1, 50), belief(1, 10)], [0], false)?.bits).toBeCloseTo(Math.log2(3), 3);
  });

  it("unequal suspects are worth their entropy", () => {
    const entropy = -(0.9 * Math.log2(0.9) + 0.1 * Math.log2(0.1));
    expect(nextMeasurement(ground, [belief(0.9, 100), belief(0.1, 20)], [0], false)?.bits).toBeCloseTo(entropy, 3);
  });

  it("suspects that agree are worth no measurement", () => {
    expect(nextMeasurement(ground, [belief(0.5, 80), belief(0.5, 80)], [0, 1], false)).toBeUndefined();
  });

  it.each([1, 2, 3, 4])("suspects %i deviations apart: what an integral gives, less a little for the bins", (apart) => {
    const other = 100 - apart * deviationOf(ground, 0, 100);
    const found = nextMeasurement(ground, [belief(0.5, 100), belief(0.5, other)], [0], false)!.bits;
    const exact = twoEqual(100, other, [deviationOf(ground, 0, 100), deviationOf(ground, 0, other)]);
    // Putting readings into bins can only lose, and bins of a fraction of a deviation lose little.
    expect(found).toBeLessThan(exact + 1e-3);
    expect(found).toBeGreaterThan(exact - 0.03);
  });

  it("goes for cold ohms where they tell half of it, for live volts where they tell a fifth", () => {
    // Volts tell all three apart; ohms one from the others.
    const half = [belief(1, 100, COLD + 2), belief(1, 50), belief(1, 10)];
    expect(nextMeasurement(ground, half, [0, 1], false)?.observable.quantity).toBe("ohms");
    const little = [belief(0.04, 100, COLD + 2), belief(0.48, 50), belief(0.48, 10)];
    expect(nextMeasurement(ground, little, [0, 1], false)?.observable.quantity).toBe("dc-volts");
    expect(nextMeasurement(ground, little, [0, 1], true)?.observable.quantity).toBe("ohms");
  });

  it("offers nothing with power where that is forbidden", () => {
    expect(nextMeasurement(ground, [belief(0.5, 100), belief(0.5, 20)], [0, 2], true)).toBeUndefined();
  });

  it("takes the easier one of equals", () => {
    const found = nextMeasurement(ground, [belief(0.5, 100, COLD, 100), belief(0.5, 20, COLD, 20)], [2, 0], false);
    expect(found?.observable.quantity).toBe("dc-volts");
    expect(found?.index).toBe(0);
  });

  it("knows nothing of a reading that most suspects do not tell, and looks at candidates only", () => {
    expect(nextMeasurement(ground, [belief(0.3, 100), belief(0.1, 20), belief(0.6, Number.NaN)], [0], false)).toBeUndefined();
    expect(nextMeasurement(ground, [belief(0.5, 100), belief(0.5, 20)], [1], false)).toBeUndefined();
  });
});
