import { describe, expect, it } from "vitest";
import { preferredSeries } from "../quantities/preferred/series.ts";
import { deviationOf, parallelPair, preferredWithin, ratingFrom } from "./candidates.ts";

describe("preferredWithin", () => {
  it("gives the values of the limits, nearest first, under the coarsest series that has them", () => {
    // E6 10 15, E12 12 between 9 and 16 (iec-60063-2015).
    expect(preferredWithin(10e-6, { lowest: 9e-6, highest: 16e-6 }, ["E6", "E12"])).toEqual([
      { value: 10e-6, deviation: 0, series: "E6" },
      { value: 12e-6, deviation: 0.2, series: "E12" },
      { value: 15e-6, deviation: 0.5, series: "E6" },
    ]);
  });

  it("takes values that lie on a limit, and none beyond", () => {
    const values = (lowest: number, highest: number) => preferredWithin(33, { lowest, highest }, ["E12"]).map(({ value }) => value);
    expect(values(33, 39)).toEqual([33, 39]);
    expect(values(33.1, 38.9)).toEqual([]);
    expect(values(0.3 * 11, 0.3 * 13)).toEqual([3.9, 3.3]);
  });
});

describe("parallelPair", () => {
  /** All sums of two E12 values from 1 to 820, found by trying every pair. */
  const singles = [1, 10, 100].flatMap((decade) => preferredSeries.E12.map((member) => (member * decade) / 10));
  const nearestMiss = (wanted: number): number =>
    Math.min(...singles.flatMap((one) => singles.map((other) => Math.abs(one + other - wanted))));

  it.each([250, 500, 400, 75, 600, 25, 125, 350])("comes as near to %d pF as any pair", (picofarads) => {
    const pair = parallelPair(picofarads * 1e-12, 0.05);
    if (!pair) throw new Error("no pair");
    const sum = (pair[0] + pair[1]) * 1e12;
    expect(Math.abs(sum - picofarads)).toBeCloseTo(nearestMiss(picofarads), 6);
    expect(pair[0]).toBeGreaterThanOrEqual(pair[1]);
  });

  it("finds 150 and 100 for 250", () => {
    expect(parallelPair(250e-12, 0.005)).toEqual([150e-12, 100e-12]);
  });

  it("gives up on what no pair comes near to", () => {
    expect(parallelPair(105e-12, 1e-6)).toBeUndefined();
  });
});

describe("ratingFrom and deviationOf", () => {
  it("takes the first rating that is enough", () => {
    expect(ratingFrom([400, 630, 1000], 600)).toBe(630);
    expect(ratingFrom([400, 630, 1000], 630)).toBe(630);
    expect(ratingFrom([400, 630, 1000], 1001)).toBeUndefined();
  });

  it("gives shares of the old value", () => {
    expect(deviationOf(47, 50)).toBe(-0.06);
    expect(deviationOf(0.1 + 0.2, 0.3)).toBe(0);
  });
});
