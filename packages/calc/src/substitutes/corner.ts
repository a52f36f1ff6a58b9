import type { Candidate } from "./substitution.ts";

/** Corner of a capacitor and a resistor, hertz: 1 / (2 pi R C). Source: circuit theory. */
function cornerHertz(farads: number, ohms: number): number {
  return 1 / (2 * Math.PI * ohms * farads);
}

/** The corner of the old part as a field; nothing when the resistor is not known. */
export const cornerOf = (farads: number, ohms: number | undefined): { cornerHertz?: number } =>
  ohms === undefined ? {} : { cornerHertz: cornerHertz(farads, ohms) };

/** The candidates with the corner each gives with `ohms`; as they are when the resistor is not known. */
export function withCorners(candidates: readonly Candidate[], ohms: number | undefined): Candidate[] {
  return candidates.map((candidate) =>
    ohms === undefined ? candidate : { ...candidate, cornerHertz: cornerHertz(candidate.value, ohms) },
  );
}
