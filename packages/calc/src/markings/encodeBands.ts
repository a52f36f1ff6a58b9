import { problem } from "../quantities/problem.ts";
import type { Result } from "../quantities/types.ts";
import { type Colour, colourDigits, colourExponents, colours, tolerancePercents } from "./colours.ts";

const expected = "a value of two figures (5 % and wider) or three figures (2 % and closer), times a power of ten from -3 to 9";

function colourOf(table: Readonly<Partial<Record<Colour, number>>>, wanted: number): Colour | undefined {
  return colours.find((colour) => table[colour] === wanted);
}

/**
 * The bands of a resistor: three at 20 %, four from 10 to 5 %, five at 2 % and closer (IEC 60062, S4).
 * `ohms` must have no more figures than the bands can carry; `tolerance` is a share (0.05 for 5 %).
 */
export function encodeBands(ohms: number, tolerance: number): Result<readonly Colour[]> {
  const percent = Number((tolerance * 100).toPrecision(6));
  const band = colourOf(tolerancePercents, percent);
  if (!band) return problem(`there is no band for ${percent} %`, 0, 0, expected, "1, 2, 5, 10 or 20 %");
  if (!(ohms > 0) || !Number.isFinite(ohms)) return problem(`${ohms} ohm has no bands`, 0, 0, expected);
  const figures = percent >= 5 ? 2 : 3;
  const [mantissa = "", power = "0"] = ohms.toExponential(figures - 1).split("e");
  const digits = mantissa.replace(".", "");
  const exponent = Number(power) - (figures - 1);
  const multiplier = colourOf(colourExponents, exponent);
  const represented = Number(`${digits}e${exponent}`);
  if (Math.abs(represented - ohms) > 1e-9 * ohms)
    return problem(`${ohms} ohm has more than ${figures} figures`, 0, 0, expected, `${represented} ohm`);
  if (!multiplier) return problem(`${ohms} ohm lies outside the code`, 0, 0, expected);
  const bands = [...digits].map((digit) => colourOf(colourDigits, Number(digit)) ?? "none");
  return { ok: true, value: band === "none" ? [...bands, multiplier] : [...bands, multiplier, band] };
}
