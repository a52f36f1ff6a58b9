import type { ScannedNumber } from "./scanNumber.ts";
import type { Dimension } from "./types.ts";

/** Letters that stand for the decimal point and the unit, with their power of ten: IEC 60062 (S65 for L, S66). */
export const codeLetters: Readonly<Partial<Record<Dimension, Readonly<Record<string, number>>>>> = {
  resistance: { L: -3, R: 0, r: 0, K: 3, k: 3, M: 6, G: 9, T: 12 },
  capacitance: { p: -12, P: -12, n: -9, N: -9, u: -6, U: -6, m: -3, F: 0 },
  voltage: { V: 0 },
};

const code = /(\d{0,4})([A-Za-z])(\d{1,4})(?![\d.A-Za-z])/y;
const codeWithTolerance = /(\d{0,4})([A-Za-z])(\d{1,4})(?=[A-Z](?![\dA-Za-z]))/y;

/**
 * A value with a letter for its decimal point that begins at `offset`: 4R7, 47K3, R47, u47, 3p3; or null.
 * With `toleranceFollows` one capital may stand behind it (4K7J); that letter is not part of the length.
 */
export function scanLetterCode(
  text: string,
  offset: number,
  dimension: Dimension,
  toleranceFollows = false,
): { number: ScannedNumber; exponent: number } | null {
  const known = codeLetters[dimension];
  if (!known) return null;
  for (const pattern of toleranceFollows ? [code, codeWithTolerance] : [code]) {
    pattern.lastIndex = offset;
    const found = pattern.exec(text);
    const exponent = found && known[found[2] ?? ""];
    if (found === null || exponent === null || exponent === undefined) continue;
    const digits = `${found[1] || "0"}.${found[3]}`;
    return { number: { digits, exponent: 0, divisor: 1, length: found[0].length, negative: false }, exponent };
  }
  return null;
}
