import { percentTolerance } from "../quantities/parseTolerance.ts";
import type { Tolerance } from "../quantities/types.ts";
import type { CodeReading } from "./codeReading.ts";
import { type Colour, colourDigits, colourExponents } from "./colours.ts";

/** A number a colour stands for. */
export type Percents = Readonly<Partial<Record<Colour, number>>>;

/** A family's reader: every reading its marks allow, none when they do not fit. */
export type Reader = (marks: readonly Colour[]) => CodeReading[];

/** The figures of some colours as text; undefined when one is no figure. */
function figuresOf(marks: readonly (Colour | undefined)[]): string | undefined {
  const digits = marks.map((colour) => colour && colourDigits[colour]);
  return digits.includes(undefined) ? undefined : digits.join("");
}

/** Farads from colours of figures and of the power of ten, in picofarad; undefined when they do not fit. */
export function farads(
  marks: readonly (Colour | undefined)[],
  power: Colour | undefined,
  allowed?: readonly Colour[],
  exponents = colourExponents,
): number | undefined {
  const figures = figuresOf(marks);
  const exponent = power && (!allowed || allowed.includes(power)) ? exponents[power] : undefined;
  if (figures === undefined || exponent === undefined || figures.startsWith("0")) return undefined;
  const value = Number(`${figures}e${exponent - 12}`);
  // A colour-coded capacitor above 10 uF does not exist: the marks were read in a wrong order.
  return value > 1e-5 ? undefined : value;
}

/** The tolerance field of a reading. */
export function percentsOf(minus: number, plus = minus): { tolerance: Tolerance } {
  return { tolerance: percentTolerance(minus, plus) };
}
