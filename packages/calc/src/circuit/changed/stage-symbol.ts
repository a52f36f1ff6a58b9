import { STAGE_SHARE } from "../stage-scheme.ts";

/** A two-stage implicit scheme whose last stage is the step's result: times of its stages, its weights, and its inverse matrix. */
export interface StageScheme {
  times: readonly [number, number];
  weights: readonly [number, number];
  inverse: readonly [number, number, number, number];
}

/** The scheme of the march (see `STAGE_SHARE`). */
export const MARCH_SCHEME: StageScheme = {
  times: [STAGE_SHARE, 1],
  weights: [1 - STAGE_SHARE, STAGE_SHARE],
  inverse: [1 / STAGE_SHARE, 0, -(1 - STAGE_SHARE) / STAGE_SHARE ** 2, 1 / STAGE_SHARE],
};

/**
 * Radau IIA of two stages (Hairer and Wanner, Solving Ordinary Differential Equations II, 1996, table IV.5.5): of third order and
 * L-stable. Its stages hang on each other, which costs a march dearly and costs nothing here.
 */
export const RADAU_SCHEME: StageScheme = {
  times: [1 / 3, 1],
  weights: [3 / 4, 1 / 4],
  inverse: [3 / 2, 1 / 2, -9 / 2, 5 / 2],
};

/**
 * A two-stage scheme seen at the frequencies of a period of equal steps. A periodic sequence z^m of stage pairs (X1, X2), z on the
 * unit circle, has the stage derivatives S(z) (X1, X2) with S(z) = (A^-1 - A^-1 1 e2^T / z) / step (Lubich and Ostermann, Math. Comp.
 * 60, 1993). S is taken apart into its eigenvalues: at each, the network is an ordinary one at that complex frequency.
 *
 * Harmonic h from 0 to steps / 2 has places 2 h and 2 h + 1 in `re` and `im`. Place 0 is the mean.
 */
export interface StageSymbol {
  scheme: StageScheme;
  steps: number;
  stepSeconds: number;
  /** Complex frequencies in 1/seconds. */
  re: Float64Array;
  im: Float64Array;
  /** Stage pair of each eigenvector, [place][stage], real and imaginary parts interleaved: four numbers a place. */
  vectors: Float64Array;
  /** Share of each eigenvector in a stage pair: [place][stage], interleaved. */
  shares: Float64Array;
}

/** Frequency in 1/seconds that stands for zero: it keeps the core of a transformer without wire resistance determined. */
const LEAST_FREQUENCY = 1e-9;

/** @param steps even number of steps of a period of 1/hertz seconds */
export function stageSymbol(hertz: number, steps: number, scheme: StageScheme): StageSymbol {
  const stepSeconds = 1 / hertz / steps;
  const places = steps + 2;
  const symbol: StageSymbol = {
    scheme,
    steps,
    stepSeconds,
    re: new Float64Array(places),
    im: new Float64Array(places),
    vectors: new Float64Array(4 * places),
    shares: new Float64Array(4 * places),
  };
  const [a, b, c, d] = scheme.inverse;
  for (let h = 0; h <= steps / 2; h++) {
    // S step = [[a, b - zeta (a + b)], [c, d - zeta (c + d)]], zeta = 1 / z.
    const angle = (-2 * Math.PI * h) / steps;
    const [zr, zi] = [Math.cos(angle), Math.sin(angle)];
    const [br, bi] = [b - zr * (a + b), -zi * (a + b)];
    const [dr, di] = [d - zr * (c + d), -zi * (c + d)];
    // Eigenvalues: (a + d) / 2 -+ root, root^2 = ((a - d) / 2)^2 + b c.
    const [hr, hi] = [(a - dr) / 2, -di / 2];
    const [pr, pi] = [hr * hr - hi * hi + br * c, 2 * hr * hi + bi * c];
    const modulus = Math.hypot(pr, pi);
    const rootRe = Math.sqrt(Math.max(0, (modulus + pr) / 2));
    const rootIm = Math.sqrt(Math.max(0, (modulus - pr) / 2)) * (pi < 0 ? -1 : 1);
    const u: number[] = [];
    for (let e = 0; e < 2; e++) {
      const sign = e === 0 ? -1 : 1;
      const re = (a + dr) / 2 + sign * rootRe;
      const im = di / 2 + sign * rootIm;
      const place = 2 * h + e;
      symbol.re[place] = re / stepSeconds;
      symbol.im[place] = im / stepSeconds;
      // Eigenvector (1, x): a + b x = lambda.
      const size = br * br + bi * bi;
      u.push(((re - a) * br + im * bi) / size, (im * br - (re - a) * bi) / size);
    }
    if (h === 0) {
      symbol.re[0] = LEAST_FREQUENCY;
      symbol.im[0] = 0;
    }
    const [ur, ui, wr, wi] = u as [number, number, number, number];
    symbol.vectors.set([1, 0, ur, ui, 1, 0, wr, wi], 8 * h);
    // Inverse of [[1, 1], [u, w]] is [[w, -1], [-u, 1]] / (w - u).
    const [er, ei] = [wr - ur, wi - ui];
    const size = er * er + ei * ei;
    const [ir, ii] = [er / size, -ei / size];
    symbol.shares.set([wr * ir - wi * ii, wr * ii + wi * ir, -ir, -ii, -(ur * ir - ui * ii), -(ur * ii + ui * ir), ir, ii], 8 * h);
  }
  return symbol;
}
