import { describe, expect, it } from "vitest";
import { STAGE_SHARE } from "../stage-scheme.ts";
import { MARCH_SCHEME, RADAU_SCHEME, type StageScheme, stageSymbol } from "./stage-symbol.ts";

type Complex = readonly [re: number, im: number];
const times = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
const plus = ([a, b]: Complex, [c, d]: Complex): Complex => [a + c, b + d];
const schemes: [string, StageScheme][] = [
  ["the march", MARCH_SCHEME],
  ["Radau IIA", RADAU_SCHEME],
];

describe.each(schemes)("stage scheme of %s", (_, { times: [c1, c2], weights: [b1, b2], inverse: [a, b, c, d] }) => {
  // The matrix whose inverse is given: A = [[d, -b], [-c, a]] / (ad - bc).
  const det = a * d - b * c;
  const [a11, a12, a21, a22] = [d / det, -b / det, -c / det, a / det];

  it("has stages that integrate a constant up to their times, and a last stage that is the step's result", () => {
    expect([a11 + a12, a21 + a22]).toEqual([expect.closeTo(c1, 12), expect.closeTo(c2, 12)]);
    expect([a21, a22, c2]).toEqual([expect.closeTo(b1, 12), expect.closeTo(b2, 12), 1]);
  });

  it("is of second order: sum of b = 1, sum of b c = 1/2 (Hairer, Norsett and Wanner I, II.1)", () => {
    expect(b1 + b2).toBeCloseTo(1, 12);
    expect(b1 * c1 + b2 * c2).toBeCloseTo(1 / 2, 12);
  });
});

it("Radau IIA is of third order, and the march is not: sum of b c^2 = 1/3", () => {
  const third = ({ times: [c1, c2], weights: [b1, b2] }: StageScheme) => b1 * c1 ** 2 + b2 * c2 ** 2;
  expect(third(RADAU_SCHEME)).toBeCloseTo(1 / 3, 12);
  expect(Math.abs(third(MARCH_SCHEME) - 1 / 3)).toBeGreaterThan(1e-3);
  // L-stable (from-memory: the two-stage diagonally implicit scheme has its share at 1 - 1/sqrt(2)).
  expect(STAGE_SHARE).toBeCloseTo(1 - Math.SQRT1_2, 12);
});

describe.each(schemes)("stageSymbol of %s", (_, scheme) => {
  const [hertz, steps] = [60, 16];
  const symbol = stageSymbol(hertz, steps, scheme);
  const [a, b, c, d] = scheme.inverse;
  const vector = (place: number, stage: 0 | 1): Complex => [
    symbol.vectors[4 * place + 2 * stage]!,
    symbol.vectors[4 * place + 2 * stage + 1]!,
  ];
  const share = (place: number, stage: 0 | 1): Complex => [
    symbol.shares[4 * place + 2 * stage]!,
    symbol.shares[4 * place + 2 * stage + 1]!,
  ];

  it("has the length of a step, and two places for every harmonic up to half the steps", () => {
    expect(symbol.stepSeconds).toBeCloseTo(1 / hertz / steps, 12);
    expect(symbol.re).toHaveLength(steps + 2);
  });

  it("vectors and shares are each other's inverse", () => {
    for (let h = 0; h <= steps / 2; h += 1)
      for (const row of [0, 1] as const)
        for (const column of [0, 1] as const) {
          // Sum over the two places of vector[row] times share of the column's unit.
          const sum = plus(times(vector(2 * h, row), share(2 * h, column)), times(vector(2 * h + 1, row), share(2 * h + 1, column)));
          expect(sum[0]).toBeCloseTo(row === column ? 1 : 0, 9);
          expect(sum[1]).toBeCloseTo(0, 9);
        }
  });

  it("vectors are eigenvectors of (A^-1 - A^-1 1 e2^T / z) / step, frequencies its eigenvalues", () => {
    for (let h = 1; h <= steps / 2; h += 1) {
      const zeta: Complex = [Math.cos((2 * Math.PI * h) / steps), -Math.sin((2 * Math.PI * h) / steps)];
      const rows: [Complex, Complex][] = [
        [[a, 0], plus([b, 0], times([-(a + b), 0], zeta))],
        [[c, 0], plus([d, 0], times([-(c + d), 0], zeta))],
      ];
      for (const place of [2 * h, 2 * h + 1]) {
        const lambda: Complex = [symbol.re[place]! * symbol.stepSeconds, symbol.im[place]! * symbol.stepSeconds];
        for (const row of [0, 1] as const) {
          const left = plus(times(rows[row]![0], vector(place, 0)), times(rows[row]![1], vector(place, 1)));
          const right = times(lambda, vector(place, row));
          expect(left[0]).toBeCloseTo(right[0], 9);
          expect(left[1]).toBeCloseTo(right[1], 9);
        }
      }
    }
  });

  it("has nothing growing, and stands for i h omega where the steps are fine", () => {
    for (const re of symbol.re) expect(re).toBeGreaterThan(-1e-6);
    const fine = stageSymbol(hertz, 384, scheme);
    for (const h of [1, 2, 4]) {
      // One of the two places follows the harmonic. Second order: error (h omega step)^2 / 6 at most, 7e-4 for the fourth.
      const near = Math.min(...[2 * h, 2 * h + 1].map((place) => Math.hypot(fine.re[place]!, fine.im[place]! - 2 * Math.PI * hertz * h)));
      expect(near / (2 * Math.PI * hertz * h)).toBeLessThan(1e-3);
    }
  });

  it("place 0 is the mean: next to no frequency, both stages alike", () => {
    expect(symbol.re[0]! / symbol.re[1]!).toBeLessThan(1e-9);
    expect(vector(0, 1)).toEqual([expect.closeTo(1, 9), expect.closeTo(0, 9)]);
  });
});
