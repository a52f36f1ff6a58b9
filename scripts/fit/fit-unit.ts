import { type FittedParameters, plateOhms } from "./plate-current.ts";
import { type PublishedPoint, residualsAt, voltsOf } from "./residuals.ts";
import { simplexMinimum } from "./simplex.ts";

export type FreeParameter = "mu" | "ex" | "kg1" | "kg2" | "kp" | "kvb" | "vct";

/** Wide enough for every receiving tube; keeps a fit of a few numbers to one or two points from running off. */
const BOUNDS: Record<FreeParameter, readonly [number, number]> = {
  mu: [1, 150],
  ex: [1.15, 1.6],
  kg1: [30, 50000],
  kg2: [30, 100000],
  kp: [5, 2000],
  kvb: [4, 3000],
  vct: [0.01, 0.8],
};

/**
 * Weights of the squared logarithmic misses. Plate current sets every voltage of a stage, so it comes first; plate resistance is
 * held for triodes only, since the arc tangent of the pentode equation cannot follow it.
 */
const WEIGHT = { plate: 1, siemens: 0.5, screen: 0.25, ohms: 0.1 } as const;
/** Pull back to the seed: decides what a handful of points leave open, and costs less than 1 % of current for a doubled parameter. */
const PRIOR = 2e-4;

/**
 * Fits the free parameters of one unit to published points. Every parameter moves on a logarithmic scale within its bounds and is
 * rounded to four digits.
 *
 * @param seed where to begin, and the value of every parameter that is not free
 * @param free names of the parameters that may move
 * @param points published points of this unit; those without plate current or bias are passed over
 * @returns the parameters; how far they lie from the points is for `distancesOf` to say
 */
export function fitUnit(seed: FittedParameters, free: readonly FreeParameter[], points: readonly PublishedPoint[]): FittedParameters {
  const expand = (x: readonly number[]): FittedParameters => {
    const parameters = { ...seed };
    free.forEach((name, i) => {
      const [low, high] = BOUNDS[name];
      parameters[name] = Math.min(high, Math.max(low, Math.exp(x[i] ?? 0)));
    });
    return parameters;
  };
  const start = free.map((name) => Math.log(seed[name] ?? 1));
  const cost = (x: readonly number[]) =>
    points.reduce((sum, point) => sum + missOf(expand(x), point), 0) +
    PRIOR * x.reduce((sum, value, i) => sum + (value - (start[i] ?? 0)) ** 2, 0);
  let x = start;
  for (const step of [0.4, 0.2, 0.1, 0.02]) x = simplexMinimum(cost, x, step);
  return Object.fromEntries(
    Object.entries(expand(x)).map(([name, value]) => [name, Number(value.toPrecision(4))]),
  ) as unknown as FittedParameters;
}

const square = (share: number) => Math.log(Math.max(1e-6, 1 + share)) ** 2;

function missOf(parameters: FittedParameters, point: PublishedPoint): number {
  const at = voltsOf(point);
  const misses = residualsAt(parameters, point);
  if (!at || !misses) return 0;
  const ohms = point.plateOhms === undefined || at.screenVolts !== undefined ? 0 : plateOhms(parameters, at) / point.plateOhms - 1;
  return (
    WEIGHT.plate * square(misses.plate) +
    WEIGHT.siemens * square(misses.siemens ?? 0) +
    WEIGHT.screen * square(misses.screen ?? 0) +
    WEIGHT.ohms * square(ohms)
  );
}
