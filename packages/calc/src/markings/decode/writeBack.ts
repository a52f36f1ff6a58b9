import { formatQuantity } from "../../quantities/formatQuantity.ts";
import { toleranceLetters } from "../../quantities/parseTolerance.ts";
import type { Tolerance } from "../../quantities/types.ts";
import { encodeBands } from "../encodeBands.ts";
import type { WrittenBack } from "./decoded.ts";

/** Four figures carry every value of E192 and every sum of two sections. */
const figures = 4;

const scales = {
  resistance: [
    [0, "R"],
    [3, "K"],
    [6, "M"],
    [9, "G"],
  ],
  capacitance: [
    [-12, "p"],
    [-9, "n"],
    [-6, "u"],
    [-3, "m"],
  ],
} as const;

/**
 * The letter code of IEC 60062: the letter stands for the unit and the decimal point. 4700 ohm is "4K7", 0.47 ohm "R47",
 * 47 nF "47n". Rounded to four figures.
 */
export function letterCode(value: number, dimension: "resistance" | "capacitance"): string {
  const rounded = Number(value.toPrecision(figures));
  const scale: readonly (readonly [number, string])[] = scales[dimension];
  const fitting = scale.filter(([power]) => rounded >= Number(`1e${power}`)).at(-1) ?? scale[0];
  const [power, letter] = fitting ?? [0, ""];
  const [whole = "0", part = ""] = String(Number((rounded / Number(`1e${power}`)).toPrecision(figures))).split(".");
  return whole === "0" && part !== "" ? `${letter}${part}` : `${whole}${letter}${part}`;
}

/**
 * The three-figure code of a capacitor: two figures and a power of ten, in picofarad. 47 nF is "473". Undefined below 10 pF, above
 * 99 mF and where two figures do not carry the value.
 */
export function threeFigureCode(farads: number): string | undefined {
  if (!(farads > 0)) return undefined;
  const [mantissa = "", power = "0"] = (farads * 1e12).toExponential(6).split("e");
  const two = Number(mantissa) * 10;
  const zeros = Number(power) - 1;
  if (Math.abs(two - Math.round(two)) > 1e-4 || zeros < 0 || zeros > 7) return undefined;
  return `${Math.round(two)}${zeros}`;
}

/** The letter of a tolerance in percent, or undefined. Absolute letters below 10 pF are left out. */
function toleranceLetter({ minus, plus }: Tolerance): string | undefined {
  const same = (share: number, percent: number): boolean => Math.abs(share * 100 - percent) < 1e-9;
  return Object.entries(toleranceLetters).find(([, [below, above]]) => same(minus, below) && same(plus, above))?.[0];
}

/** A value in today's spellings: SI units, letter code, and the bands or the three-figure code that would carry it. */
export function writeBack(value: number, dimension: "resistance" | "capacitance", tolerance: Tolerance): WrittenBack {
  const base = { plain: formatQuantity(value, dimension, figures), letters: letterCode(value, dimension) };
  if (dimension === "capacitance") {
    const code = threeFigureCode(value);
    return code === undefined ? base : { ...base, figures: `${code}${toleranceLetter(tolerance) ?? ""}` };
  }
  if (value === 0) return { ...base, bands: ["black"] };
  const bands = tolerance.minus === tolerance.plus ? encodeBands(value, tolerance.plus) : undefined;
  return bands?.ok ? { ...base, bands: bands.value } : base;
}
