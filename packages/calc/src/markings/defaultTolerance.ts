import { percentTolerance } from "../quantities/parseTolerance.ts";
import type { Dielectric, Tolerance } from "../quantities/types.ts";

/** Before this year an unmarked composition resistor is taken as 20 %, an electrolytic's spread as one-sided. */
const resistorYear = 1960;
const electrolyticYear = 1970;

/** Tolerance of a resistor without one written: 20 % before 1960 (and when the era is not known), 10 % after. Source: common-practice. */
export function defaultResistorTolerance(era: number | undefined): Tolerance {
  return percentTolerance(era === undefined || era < resistorYear ? 20 : 10);
}

/**
 * Tolerance of a capacitor without one written. Electrolytics before 1970: -10 +50 % above 350 V, else -10 +100 %; later +-20 %
 * (IEC 60384-4; the old ones from-memory). Paper, ceramic, oil, tantalum 20 %; mica and film 10 % (common-practice).
 */
export function defaultCapacitorTolerance(
  dielectric: Dielectric | undefined,
  era: number | undefined,
  ratedVolts: number | undefined,
): Tolerance {
  if (dielectric === "electrolytic") {
    if (era !== undefined && era >= electrolyticYear) return percentTolerance(20);
    return ratedVolts !== undefined && ratedVolts > 350 ? percentTolerance(10, 50) : percentTolerance(10, 100);
  }
  if (dielectric === "mica" || dielectric === "film" || dielectric === "air") return percentTolerance(10);
  return percentTolerance(20);
}
