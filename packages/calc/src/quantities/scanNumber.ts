/** A number as digits, not yet scaled, so that ".05" microfarad becomes 5e-8 without a rounding error of its own. */
export interface ScannedNumber {
  digits: string;
  exponent: number;
  divisor: number;
  length: number;
  negative: boolean;
}

export interface NumberOptions {
  /** "1 1/2" is one and a half. Off where a resistor's ohms may be followed by its half watt. */
  mixedFractions?: boolean;
  /** "3/4" is three quarters. Off where a slash parts the capacitance from the volts. */
  fractions?: boolean;
  /** "3,15" is 3.15, as European fuses are marked. */
  decimalComma?: boolean;
}

/** Denominators people write; 10/450 is a capacitor's marking, not a fraction. */
const denominators = new Set([2, 3, 4, 5, 8, 10, 16, 20, 32, 64]);

const vulgar: Readonly<Record<string, readonly [number, number]>> = {
  "\u00bd": [1, 2],
  "\u00bc": [1, 4],
  "\u00be": [3, 4],
  "\u2153": [1, 3],
  "\u2154": [2, 3],
  "\u215b": [1, 8],
  "\u215c": [3, 8],
  "\u215d": [5, 8],
  "\u215e": [7, 8],
};

const mixed = /([+-]?) ?(\d{1,3})[ -](\d{1,2})\/(\d{1,2})(?![\d.])/y;
const fraction = /([+-]?) ?(\d{1,2})\/(\d{1,2})(?![\d.])/y;
const vulgarFraction = /([+-]?) ?(\d{1,3})? ?([\u00bc-\u00be\u2153-\u215e])/y;
const comma = /([+-]?) ?(\d+),(\d+)(?![\d,.])/y;
const decimal = /([+-]?) ?([1-9]\d{0,2}(?:,\d{3})+(?![\d,])(?:\.\d*)?|\d+\.?\d*|\.\d+)(?:[eE]([+-]?\d{1,4}))?(?!\.?\d)/y;

function at(pattern: RegExp, text: string, offset: number): RegExpExecArray | null {
  pattern.lastIndex = offset;
  return pattern.exec(text);
}

function ofFraction(match: RegExpExecArray, whole: number, top: number, bottom: number): ScannedNumber | null {
  if (!denominators.has(bottom) || top >= bottom || top === 0) return null;
  return { digits: String(whole * bottom + top), exponent: 0, divisor: bottom, length: match[0].length, negative: match[1] === "-" };
}

/**
 * The number that begins at `offset`, or null: "1,500", ".05", "2.2e3", "3/4", "1 1/2", with or without a sign.
 * A comma that is not a thousands separator is not read unless `decimalComma` is set.
 */
export function scanNumber(text: string, offset: number, options: NumberOptions = {}): ScannedNumber | null {
  if (options.mixedFractions !== false && options.fractions !== false) {
    const found = at(mixed, text, offset);
    const number = found && ofFraction(found, Number(found[2]), Number(found[3]), Number(found[4]));
    if (number) return number;
  }
  const part = options.fractions === false ? null : at(fraction, text, offset);
  const share = part && ofFraction(part, 0, Number(part[2]), Number(part[3]));
  if (share) return share;
  const sign = at(vulgarFraction, text, offset);
  const pair = sign && vulgar[sign[3] ?? ""];
  if (sign && pair) return ofFraction(sign, Number(sign[2] ?? 0), pair[0], pair[1]);
  if (options.decimalComma) {
    const found = at(comma, text, offset);
    if (found) return { digits: `${found[2]}.${found[3]}`, exponent: 0, divisor: 1, length: found[0].length, negative: found[1] === "-" };
  }
  const found = at(decimal, text, offset);
  if (!found) return null;
  const digits = (found[2] ?? "").replaceAll(",", "");
  return { digits, exponent: Number(found[3] ?? 0), divisor: 1, length: found[0].length, negative: found[1] === "-" };
}

/** The number times ten to the `exponent`, correctly rounded when it is a plain decimal. */
export function scaled(number: ScannedNumber, exponent: number): number {
  const size = Number(`${number.digits}e${number.exponent + exponent}`) / number.divisor;
  return number.negative ? -size : size;
}
