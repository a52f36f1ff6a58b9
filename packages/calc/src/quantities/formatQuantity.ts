import type { Dimension } from "./types.ts";

/** Unit symbols from small to large: [power of ten of the unit, symbol]. */
type Scale = readonly (readonly [number, string])[];

const engineering = (symbol: string, from: number, to: number): Scale => {
  const prefixes = ["p", "n", "u", "m", "", "k", "M", "G", "T"];
  return prefixes
    .map((prefix, index) => [(index - 4) * 3, `${prefix}${symbol}`] as const)
    .filter(([exponent]) => exponent >= from && exponent <= to);
};

const scales: Readonly<Record<Dimension, Scale>> = {
  resistance: engineering("ohm", 0, 12),
  capacitance: engineering("F", -12, 0),
  inductance: engineering("H", -9, 0),
  voltage: engineering("V", -6, 3),
  current: engineering("A", -12, 3),
  power: engineering("W", -6, 3),
  energy: engineering("J", -6, 3),
  frequency: engineering("Hz", 0, 9),
  time: engineering("s", -9, 0),
  temperature: [[0, "degC"]],
  conductance: engineering("S", -6, 0),
  charge: engineering("C", -9, 0),
  length: engineering("m", -6, 0),
  ratio: [[0, ""]],
};

const celsiusZero = 273.15;

/** Rounded to significant digits, written without exponent and without trailing zeros. */
function significant(value: number, digits: number): string {
  const rounded = Number(value.toPrecision(digits));
  const text = Math.abs(rounded) >= 1e21 || (rounded !== 0 && Math.abs(rounded) < 1e-6) ? rounded.toExponential() : String(rounded);
  return text === "-0" ? "0" : text;
}

/** Above 9.99 nF the bench says microfarad, and goes on saying it up to a farad. */
function capacitanceScale(farads: number): readonly [number, string] {
  if (farads < 1e-9) return [-12, "pF"];
  if (farads < 1e-8) return [-9, "nF"];
  return farads < 1 ? [-6, "uF"] : [0, "F"];
}

/** Half a watt is written 0.5 W, not 500 mW. */
function powerScale(watts: number): readonly [number, string] | null {
  return watts >= 0.1 && watts < 1 ? [0, "W"] : null;
}

/**
 * A value in SI base units (kelvins for a temperature) in modern ASCII spelling: "47 uF", "4.7 kohm", "-55 V", "12 mA",
 * "25 degC". `digits` significant digits, trailing zeros dropped. Capacitance: pF below 1 nF, nF below 10 nF, else uF.
 * An infinite resistance is "open", another infinity "no limit"; what is not a number is "not known".
 */
export function formatQuantity(value: number, dimension: Dimension, digits = 3): string {
  if (Number.isNaN(value)) return "not known";
  if (!Number.isFinite(value)) return dimension === "resistance" && value > 0 ? "open" : "no limit";
  const places = Math.min(15, Math.max(1, Math.round(digits)));
  if (dimension === "temperature") return `${significant(value - celsiusZero, places)} degC`;
  if (dimension === "ratio") return significant(value, places);
  // Rounded before the prefix is chosen: 999.96 ohm to three digits is 1 kohm.
  const rounded = Number(value.toPrecision(places));
  const size = Math.abs(rounded);
  const scale = scales[dimension];
  const base = scale.find(([exponent]) => exponent === 0) ?? ([0, ""] as const);
  let [exponent, symbol] = base;
  if (size !== 0) {
    const fitting = scale.filter(([power]) => size >= Number(`1e${power}`)).at(-1) ?? scale[0] ?? base;
    if (dimension === "capacitance") [exponent, symbol] = capacitanceScale(size);
    else [exponent, symbol] = (dimension === "power" ? powerScale(size) : null) ?? fitting;
  }
  return `${significant(Number((rounded / Number(`1e${exponent}`)).toPrecision(15)), places)} ${symbol}`;
}
