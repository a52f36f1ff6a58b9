import { type Dimension, formatQuantity } from "@underchassis/calc";

const dimensions = new Map<string, Dimension>([
  ["V", "voltage"],
  ["A", "current"],
  ["ohm", "resistance"],
  ["F", "capacitance"],
  ["H", "inductance"],
  ["W", "power"],
  ["J", "energy"],
  ["Hz", "frequency"],
  ["s", "time"],
  ["K", "temperature"],
  ["S", "conductance"],
  ["C", "charge"],
  ["m", "length"],
  ["", "ratio"],
]);

/**
 * What the computation leaves of a zero, or a bench instrument cannot tell from it, by unit: below this a value is written as 0.
 * Leakage of a good film capacitor (picoamperes upward) and the smallest capacitances (picofarads) stay well above.
 */
const nothing: Readonly<Record<string, number>> = { V: 1e-5, A: 1e-13, W: 1e-6, J: 1e-6, ohm: 1e-6, F: 1e-14 };
const nothingElse = 1e-15;

/** Keeps number and unit on one line. */
const noBreak = "\u00a0";

/** Nothing on a bench is colder: below this many kelvins a figure is a rise, not a temperature. */
const coldestKelvins = 200;

/**
 * A value in the base unit with symbol `unit`, for people: (0.000047, "F") is "47 uF" with a no-break space. `%` values are percent already.
 * null is said as `unknown`. A unit without prefixes of its own (A2s, min) is written after the plain number.
 */
export function formatValue(value: number | null, unit: string, digits = 3, unknown = "not known"): string {
  if (value === null || Number.isNaN(value)) return unknown;
  if (value !== 0 && Math.abs(value) < (Object.hasOwn(nothing, unit) ? (nothing[unit] ?? nothingElse) : nothingElse))
    return formatValue(0, unit, digits, unknown);
  const dimension = dimensions.get(unit);
  const isRise = dimension === "temperature" && Math.abs(value) < coldestKelvins;
  if (dimension && !isRise) return formatQuantity(value, dimension, digits).replaceAll(" ", noBreak);
  return `${formatQuantity(value, "ratio", digits)}${noBreak}${unit}`;
}

/**
 * Significant digits, 3 to 6, at which values of one unit that differ also print differently: 349.6 V beside a limit of
 * 350 V must not read "350 V, limit 350 V".
 */
export function digitsToTell(values: readonly (number | null | undefined)[], unit: string): number {
  const distinct = [...new Set(values.filter((value): value is number => typeof value === "number"))];
  for (let digits = 3; digits < 6; digits++) {
    if (new Set(distinct.map((value) => formatValue(value, unit, digits))).size === distinct.length) return digits;
  }
  return 6;
}

/** A share as percent with at most three digits: 0.186 is "18.6 %". */
export function formatShare(share: number): string {
  return `${formatQuantity(share * 100, "ratio", Math.abs(share) < 1 ? 2 : 3)}${noBreak}%`;
}
