import { describe, expect, it } from "vitest";
import type { Ground } from "./ground.ts";
import { Likelihood, ownVariance } from "./likelihood.ts";

/** Two readings of 100 and 50 V that share one value, and one of ripple. */
function ground(slopes: readonly number[], more: Partial<Ground> = {}): Ground {
  const observable = (at: string, quantity: "dc-volts" | "ripple-volts") =>
    ({ at, to: "0", quantity, condition: "operating", meterOhms: 1e7, accuracy: 0.01 }) as const;
  return {
    observables: [observable("a", "dc-volts"), observable("b", "dc-volts"), observable("a", "ripple-volts")],
    situations: [],
    nominal: Float64Array.of(100, 50, 5),
    loading: Float64Array.of(1, 1, 1),
    soft: new Float64Array(3),
    offsets: new Float64Array(3),
    slopes: Float64Array.from(slopes),
    parameters: [{ key: "R1|ohms|", part: "R1", deviation: 0.1, offset: 0 }],
    volts: 100,
    ...more,
  };
}
const nominal = Float64Array.of(100, 50, 5);

describe("Likelihood", () => {
  it("of one reading is the normal density, with one chance in a hundred of a slip anywhere", () => {
    const g = ground([0, 0, 0]);
    const deviation = Math.sqrt(ownVariance(g, 0, 100));
    const { logLikelihood, deviations } = new Likelihood(g, [{ index: 0, value: 101 }]).fit(nominal);
    const density = Math.exp(-0.5 * (1 / deviation) ** 2) / (deviation * Math.sqrt(2 * Math.PI));
    // A slip may lie anywhere up to 1.3 times the highest voltage, and at least twice the reading.
    expect(logLikelihood).toBeCloseTo(Math.log(0.99 * density + 0.01 / 202), 10);
    expect(deviations[0]).toBeCloseTo(1 / deviation, 12);
  });

  it("knows that two readings which share a value move together", () => {
    const shared = ground([5, 2.5, 0]);
    const together = new Likelihood(shared, [
      { index: 0, value: 110 },
      { index: 1, value: 55 },
    ]).fit(nominal);
    const apart = new Likelihood(shared, [
      { index: 0, value: 110 },
      { index: 1, value: 45 },
    ]).fit(nominal);
    expect(together.squares).toBeLessThan(6);
    expect(apart.squares).toBeGreaterThan(20 * together.squares);
    // Each reading by itself is off by the same in both.
    expect(Math.abs(apart.deviations[1] ?? 0)).toBeCloseTo(Math.abs(together.deviations[1] ?? 0), 9);
  });

  it("takes one wild reading for a slip, and does not let it bury the others", () => {
    const likelihood = new Likelihood(ground([1, 0.5, 0]), [
      { index: 0, value: 100 },
      { index: 1, value: 5 },
      { index: 2, value: 5 },
    ]);
    const fit = likelihood.fit(nominal);
    expect(fit.slip).toBe(1);
    expect(fit.logLikelihood).toBeGreaterThan(likelihood.unexplained);
  });

  it("alone is the same where nothing ties the readings", () => {
    const likelihood = new Likelihood(ground([0, 0, 0]), [
      { index: 0, value: 101 },
      { index: 1, value: 49.8 },
      { index: 2, value: 5.3 },
    ]);
    // Two slips at once count in one and not in the other.
    expect(likelihood.alone(nominal)).toBeCloseTo(likelihood.fit(nominal).logLikelihood, 3);
  });

  it("gains nothing by a reading that is not predicted", () => {
    const likelihood = new Likelihood(ground([0, 0, 0]), [
      { index: 0, value: 100 },
      { index: 2, value: 5 },
    ]);
    expect(likelihood.fit(Float64Array.of(100, 50, Number.NaN)).logLikelihood).toBeLessThan(likelihood.fit(nominal).logLikelihood);
  });

  it("expects the middle of a lopsided tolerance", () => {
    const lopsided = ground([10, 0, 0], { parameters: [{ key: "C1|farads|", part: "C1", deviation: 0.2, offset: 1 }] });
    expect(new Likelihood(lopsided, [{ index: 0, value: 110 }]).fit(nominal).deviations[0]).toBeCloseTo(0, 12);
  });
});
