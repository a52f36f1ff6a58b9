import type { FreeParameter } from "./fit-unit.ts";
import type { FittedParameters } from "./plate-current.ts";
import { type PublishedPoint, voltsOf } from "./residuals.ts";

export type Family = "triode" | "pentode" | "converter";

/** What may move in each family, in the order in which a record names it. */
export const FREE: Record<Family, readonly FreeParameter[]> = {
  triode: ["mu", "ex", "kg1", "kp", "kvb"],
  pentode: ["mu", "ex", "kg1", "kg2", "kp", "kvb"],
  converter: ["kg1", "kg2", "kvb"],
};

/**
 * Where a fit of a new type begins, so that few points cannot lead it to a curve that no tube has: the exponent of the published
 * equations' first sets (koren-1996: 1.3 to 1.4), an amplification factor from the published one or from the bias, and a
 * perveance that gives the first point's current.
 *
 * @param points published points of the unit, at least one with plate current and bias
 */
export function seedOf(family: Family, points: readonly (PublishedPoint & { mu?: number })[]): FittedParameters {
  const first = points.find((point) => voltsOf(point));
  const at = first === undefined ? undefined : voltsOf(first);
  if (first?.plateAmps === undefined || at === undefined) throw new Error("no published point with plate current and bias");
  if (family === "triode") {
    const mu = points.find((point) => point.mu !== undefined)?.mu ?? 20;
    const ex = 1.35;
    const drive = Math.max(at.plateVolts / mu + at.gridVolts, 0.1 * (at.plateVolts / mu));
    // Half a volt of contact potential stands in the published sets of high-mu triodes (spice-library-refit).
    const contact = mu >= 60 ? { vct: 0.5 } : {};
    return { mu, ex, kg1: (2 * drive ** ex) / first.plateAmps, kp: Math.max(20, 6 * mu), kvb: 300, ...contact };
  }
  const screenVolts = at.screenVolts ?? at.plateVolts;
  // A grid-to-screen factor that leaves drive: the published transconductance says how much (gm = ex I / E).
  const ex = 1.35;
  const drive = first.siemens === undefined ? 0.4 * screenVolts : (ex * first.plateAmps) / first.siemens;
  const mu = family === "converter" ? 20 : screenVolts / Math.max(drive - at.gridVolts, 1);
  const effective = Math.max(screenVolts / mu + at.gridVolts, 0.2);
  const kvb = 15;
  return {
    mu,
    ex,
    kg1: (2 * effective ** ex * Math.atan(at.plateVolts / kvb)) / first.plateAmps,
    kg2: first.screenAmps === undefined ? 4500 : effective ** 1.5 / first.screenAmps,
    kp: family === "converter" ? 215 : Math.max(20, 6 * mu),
    kvb,
  };
}
