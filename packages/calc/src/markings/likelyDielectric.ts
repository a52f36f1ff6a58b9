import type { Dielectric, Marking } from "../quantities/types.ts";

/** From about then film took the place of paper in receivers. */
const filmYear = 1965;

/**
 * What a capacitor without a word on its make most likely is, by size and age; undefined where the trade could not say.
 * Source: common-practice. From 2 uF up to 500 V DC an electrolytic; between 1 nF and 2 uF paper before 1965, film after;
 * mains classes and small values are left open (film or ceramic, mica or ceramic).
 */
export function likelyDielectric(
  farads: number,
  ratedVolts: number | undefined,
  alternating: boolean,
  safetyClass: Marking["safetyClass"],
  era: number | undefined,
): Dielectric | undefined {
  if (safetyClass !== undefined) return safetyClass.startsWith("X") ? "film" : undefined;
  if (alternating) return undefined;
  if (farads >= 2e-6) return ratedVolts === undefined || ratedVolts <= 500 ? "electrolytic" : undefined;
  if (farads >= 1e-6)
    return era !== undefined && era >= filmYear ? undefined : ratedVolts !== undefined && ratedVolts >= 200 ? "paper" : undefined;
  if (farads < 1e-9) return undefined;
  return era !== undefined && era >= filmYear ? "film" : "paper";
}
