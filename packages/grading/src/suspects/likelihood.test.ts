import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groundOf, observableAt } from "../testing/suspectChassis.ts";
import type { Ground } from "./ground.ts";
import { Likelihood, logSum, ownVariance } from "./likelihood.ts";

/** How often a reading is a slip, as the source has it. */
const SLIP = 0.01;
const NOMINAL = [60, 40, 90];
const SLOPES = [
  [2, 0.5],
  [-1, 1],
  [0.3, 2],
];

const groundWith = (count: number, slopes: readonly (readonly number[])[] = SLOPES) =>
  groundOf(NOMINAL.slice(0, count).map((nominal, k) => ({ observable: observableAt("dc-volts", `p${k}`), nominal, slopes: slopes[k]! })));
const likelihoodOf = (ground: Ground, values: readonly number[]) =>
  new Likelihood(
    ground,
    values.map((value, index) => ({ index, value })),
  );

/** Determinant by the first row: for up to three readings. */
function determinant(m: number[][]): number {
  if (m.length === 0) return 1;
  return m[0]!.reduce(
    (sum, x, j) => sum + (j % 2 === 0 ? 1 : -1) * x * determinant(m.slice(1).map((row) => row.filter((_, c) => c !== j))),
    0,
  );
}

/** Log density of a multivariate normal of up to three readings by cofactors. */
function logNormal(residuals: number[], m: number[][]): number {
  const n = residuals.length;
  const det = determinant(m);
  let quadratic = 0;
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j < n; j += 1) {
      const minor = m.filter((_, r) => r !== j).map((row) => row.filter((_, c) => c !== i));
      quadratic += (residuals[i]! * residuals[j]! * ((i + j) % 2 === 0 ? 1 : -1) * determinant(minor)) / det;
    }
  return -0.5 * (quadratic + Math.log(det) + n * Math.log(2 * Math.PI));
}

/** No reading a slip, or one of them: the sum of those densities, written out. `stretch` scales the spread of the parts. */
function direct(ground: Ground, values: readonly number[], predicted: readonly number[], stretch: readonly number[]): number {
  const n = values.length;
  const residuals = values.map((value, k) => value - predicted[k]!);
  const matrix = residuals.map((_, i) =>
    residuals.map((__, j) => {
      const shared = SLOPES[i]!.reduce((sum, slope, k) => sum + slope * SLOPES[j]![k]!, 0) * stretch[i]! * stretch[j]!;
      return shared + (i === j ? ownVariance(ground, i, predicted[i]!) : 0);
    }),
  );
  const without = <T>(list: readonly T[], at: number) => list.filter((_, k) => k !== at);
  const slips = values.map((value, at) => {
    const span = Math.max(1.3 * ground.volts, 2 * Math.abs(value));
    const rest = without(matrix, at).map((row) => without(row, at));
    return logNormal(without(residuals, at), rest) + (n - 1) * Math.log(1 - SLIP) + Math.log(SLIP / span);
  });
  const terms = [logNormal(residuals, matrix) + n * Math.log(1 - SLIP), ...slips];
  const most = Math.max(...terms);
  return most + Math.log(terms.reduce((sum, term) => sum + Math.exp(term - most), 0));
}

describe("Likelihood", () => {
  it.each([1, 2, 3])("is the normal density with slips, written out for %i readings", (count) => {
    const ground = groundWith(count);
    const errors = fc.array(fc.double({ min: -6, max: 6, noNaN: true }), { minLength: count, maxLength: count });
    fc.assert(
      fc.property(errors, errors, (off, moved) => {
        const values = NOMINAL.slice(0, count).map((nominal, k) => nominal + off[k]!);
        const predicted = NOMINAL.slice(0, count).map((nominal, k) => nominal * (1 + moved[k]! / 10));
        const found = likelihoodOf(ground, values).fit(Float64Array.from(predicted));
        const stretch = predicted.map((value, k) => value / NOMINAL[k]!);
        const expected = direct(ground, values, predicted, stretch);
        expect(Math.abs(found.logLikelihood - expected)).toBeLessThan(1e-9 * Math.max(1, Math.abs(expected)));
      }),
      { numRuns: 40 },
    );
  });

  it("knows that two readings which share a value move together", () => {
    const ground = groundWith(2, [[5], [2.5]]);
    const [together, apart] = [5, -5].map((off) => likelihoodOf(ground, [70, 40 + off]).fit(ground.nominal));
    expect(together!.squares).toBeLessThan(6);
    expect(apart!.squares).toBeGreaterThan(20 * together!.squares);
    // Each reading by itself is off by the same in both.
    expect(apart!.deviations[1]).toBeCloseTo(-together!.deviations[1]!, 9);
  });

  it("takes a reading far off for a slip, and nothing else", () => {
    const ground = groundWith(3);
    const sound = likelihoodOf(ground, NOMINAL).fit(ground.nominal);
    expect(sound.slip).toBeUndefined();
    expect(sound.squares).toBeCloseTo(0, 9);
    const off = 20 * likelihoodOf(ground, NOMINAL).deviation(1);
    const fit = likelihoodOf(ground, [60, 40 + off, 90]).fit(ground.nominal);
    expect(fit.slip).toBe(1);
    expect(fit.deviations[1]).toBeCloseTo(20, 9);
    expect(fit.deviations[0]).toBe(0);
    expect(fit.logLikelihood).toBeGreaterThan(likelihoodOf(ground, [60, 40 + off, 90]).unexplained);
  });

  it("gains nothing by a reading that a prediction does not tell", () => {
    const ground = groundWith(3);
    const values = [61, 40.5, 93];
    const untold = likelihoodOf(ground, values).fit(Float64Array.of(60, Number.NaN, 90));
    const others = new Likelihood(
      ground,
      [0, 2].map((index) => ({ index, value: values[index]! })),
    ).fit(ground.nominal);
    expect(untold.logLikelihood).toBeCloseTo(others.logLikelihood - Math.log(130), 9);
    expect(untold.deviations[1]).toBe(0);
    expect(untold.logLikelihood).toBeLessThan(likelihoodOf(ground, values).fit(ground.nominal).logLikelihood);
    const nothing = likelihoodOf(ground, values).fit(new Float64Array(3).fill(Number.NaN));
    expect(nothing.logLikelihood).toBeCloseTo(likelihoodOf(ground, values).unexplained, 9);
  });

  it("alone is the same where nothing ties the readings: exactly for one, but for two slips at once for three", () => {
    const free = groundWith(3, [[0], [0], [0]]);
    const one = groundWith(1, [[0]]);
    for (const value of [60, 61, 75])
      expect(likelihoodOf(one, [value]).alone(one.nominal)).toBeCloseTo(likelihoodOf(one, [value]).fit(one.nominal).logLikelihood, 9);
    // Two slips weigh (0.01 / 130 V)^2 against a density of 0.4 / 0.5 V each: 1e-8.
    const three = likelihoodOf(free, [60.2, 39.9, 90.5]);
    expect(three.alone(free.nominal)).toBeCloseTo(three.fit(free.nominal).logLikelihood, 6);
    const tied = likelihoodOf(groundWith(3), [62, 39, 90.3]);
    expect(tied.alone(free.nominal)).toBeLessThan(tied.fit(free.nominal).logLikelihood);
  });

  it("looks about the middle of the tolerances", () => {
    const ground: Ground = {
      ...groundWith(1),
      parameters: [0, 1].map((k) => ({ key: `${k}`, part: `${k}`, deviation: 0.1, offset: k === 0 ? 1.5 : -1 })),
    };
    ground.offsets[0] = 0.25;
    // 1.5 x 2 V - 1 x 0.5 V + 0.25 V.
    const fit = likelihoodOf(ground, [60 + 2.75]).fit(ground.nominal);
    expect(fit.deviations[0]).toBeCloseTo(0, 12);
    expect(likelihoodOf(ground, [60]).fit(ground.nominal).deviations[0]).toBeLessThan(-1);
  });

  it("estimates a shift by the share of the spread that is the value's own", () => {
    const ground = groundWith(1, [[2]]);
    const own = ownVariance(ground, 0, 60);
    expect(likelihoodOf(ground, [63]).estimate(ground.nominal, ground.slopes, 0)).toBeCloseTo((2 * 3) / (4 + own), 9);
  });

  it("is loose by a share of what a fault changes when it is a first look", () => {
    const ground = groundWith(1, [[0]]);
    const moved = Float64Array.of(80);
    const [tight, loose] = [0, 0.25].map((share) => likelihoodOf(ground, [84]).fit(moved, { loose: share }).deviations[0]!);
    const own = ownVariance(ground, 0, 80);
    expect(tight).toBeCloseTo(4 / Math.sqrt(own), 9);
    expect(loose).toBeCloseTo(4 / Math.sqrt(own + 5 ** 2), 9);
  });
});

it("logSum is the logarithm of a sum, without overflow", () => {
  expect(logSum([Math.log(2), Math.log(3)])).toBeCloseTo(Math.log(5), 12);
  expect(logSum([1000, 1000])).toBeCloseTo(1000 + Math.LN2, 12);
  expect(logSum([Number.NEGATIVE_INFINITY])).toBe(Number.NEGATIVE_INFINITY);
});
