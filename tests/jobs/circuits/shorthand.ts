/** Shorthand for the parts of the job circuits, and the hand formulas that their results are held against. */
import type { JobPart } from "@underchassis/dataset";
import { LINE_HERTZ } from "./case.ts";

export const two = (kind: JobPart["kind"], name: string, a: string, b: string, marked: string): JobPart => ({
  name,
  kind,
  between: [a, b],
  marked,
});
export const diode = (name: string, a: string, b: string, type = "1N4007"): JobPart => ({ name, kind: "rectifier", between: [a, b], type });
export const load = (name: string, a: string, b: string, marked: string): JobPart => ({ name, kind: "load", between: [a, b], marked });

type Windings = Record<string, { between: [string, string, ...string[]]; marked: string; measured: string }>;

/** A power transformer straight on the line: 120 V, 2 ohm of primary. Windings marked without a current give their voltage open. */
export const transformer = (windings: Windings): JobPart => ({
  name: "T1",
  kind: "transformer",
  windings: { primary: { between: ["line hot", "line neutral"], marked: "120 V", measured: "2 ohm" }, ...windings },
});

/** Winding and reflected primary in series, one side of a winding of `volts`. */
export const sourceOhms = (volts: number, sideOhms: number): number => sideOhms + 2 * (volts / 120) ** 2;

/**
 * Mean volts of a capacitor-input supply: the peak, less half the ripple (1 / (2 f C) of the current, half of that with two pulses a
 * cycle), less the source resistance times the pulse-to-mean ratio of the current, taken as 6 for one pulse a cycle and 4 for two.
 * common-practice, good to about a tenth.
 */
export function capacitorInput(rmsVolts: number, amps: number, ohms: number, microfarads: number, pulses: 1 | 2): number {
  const sag = 1e6 / (2 * LINE_HERTZ * microfarads * pulses);
  return Math.SQRT2 * rmsVolts - amps * (sag + ohms * (pulses === 1 ? 6 : 4));
}
