import { type ElectrodeVolts, type FittedParameters, plateAmps, screenAmps, transconductance } from "./plate-current.ts";
import { simplexMinimum } from "./simplex.ts";

/** A published operating point of a tube record, SI units. */
export interface PublishedPoint {
  service: string;
  plateVolts?: number;
  screenVolts?: number;
  gridVolts?: number;
  cathodeOhms?: number;
  plateAmps?: number;
  screenAmps?: number;
  siemens?: number;
}

export type FreeParameter = "mu" | "ex" | "kg1" | "kg2" | "kp" | "kvb" | "vct";

export interface Residuals {
  /** Largest shares by which the model misses the published values. */
  plate: number;
  screen: number;
  siemens: number;
}

/** Voltages of a published point; bias by a cathode resistor becomes grid volts from the published currents. */
export function voltsOf(point: PublishedPoint): ElectrodeVolts | undefined {
  const { plateVolts, screenVolts, plateAmps: plate, screenAmps: screen = 0, cathodeOhms } = point;
  if (plateVolts === undefined || plate === undefined) return undefined;
  const gridVolts = point.gridVolts ?? (cathodeOhms === undefined ? undefined : -cathodeOhms * (plate + screen));
  if (gridVolts === undefined) return undefined;
  return screenVolts === undefined ? { plateVolts, gridVolts } : { plateVolts, screenVolts, gridVolts };
}

/** How far the model misses each published point: shares of the published values. */
export function residualsAt(parameters: FittedParameters, point: PublishedPoint): Residuals | undefined {
  const at = voltsOf(point);
  if (!at || point.plateAmps === undefined) return undefined;
  return {
    plate: plateAmps(parameters, at) / point.plateAmps - 1,
    screen: point.screenAmps === undefined ? 0 : screenAmps(parameters, at) / point.screenAmps - 1,
    siemens: point.siemens === undefined ? 0 : transconductance(parameters, at) / point.siemens - 1,
  };
}

/** Wide enough for every receiving tube; keeps a fit of three numbers to two points from running off. */
const BOUNDS: Record<FreeParameter, readonly [number, number]> = {
  mu: [2, 150],
  ex: [1.2, 1.5],
  kg1: [50, 20000],
  kg2: [50, 50000],
  kp: [10, 2000],
  kvb: [1, 600],
  vct: [0.01, 0.8],
};

/**
 * Fits the free parameters to the published points: squares of the logarithmic misses, plate current with weight 1,
 * transconductance 0.1, screen current 0.25. Every parameter moves on a logarithmic scale within its bounds.
 */
export function fitUnit(
  seed: FittedParameters,
  free: readonly FreeParameter[],
  points: readonly PublishedPoint[],
): { parameters: FittedParameters; worst: Residuals } {
  const usable = points.filter((point) => voltsOf(point));
  const expand = (x: readonly number[]): FittedParameters => {
    const parameters = { ...seed };
    free.forEach((name, i) => {
      const [low, high] = BOUNDS[name];
      parameters[name] = Math.min(high, Math.max(low, Math.exp(x[i] ?? 0)));
    });
    return parameters;
  };
  const square = (share: number) => Math.log(Math.max(1e-6, 1 + share)) ** 2;
  const cost = (x: readonly number[]) => {
    const parameters = expand(x);
    return usable.reduce((sum, point) => {
      const misses = residualsAt(parameters, point);
      return misses ? sum + square(misses.plate) + 0.1 * square(misses.siemens) + 0.25 * square(misses.screen) : sum;
    }, 0);
  };
  let x = free.map((name) => Math.log(seed[name] ?? 1));
  for (const step of [0.4, 0.1, 0.02]) x = simplexMinimum(cost, x, step);
  const rounded = Object.fromEntries(
    Object.entries(expand(x)).map(([name, value]) => [name, Number(value.toPrecision(4))]),
  ) as unknown as FittedParameters;
  const worst: Residuals = { plate: 0, screen: 0, siemens: 0 };
  for (const point of usable) {
    const misses = residualsAt(rounded, point);
    if (!misses) continue;
    for (const name of ["plate", "screen", "siemens"] as const) worst[name] = Math.max(worst[name], Math.abs(misses[name]));
  }
  return { parameters: rounded, worst };
}
