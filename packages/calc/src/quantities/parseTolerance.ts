import { prepareText } from "./prepareText.ts";
import { problem, quoted } from "./problem.ts";
import type { Result, Tolerance } from "./types.ts";

const expected = 'a tolerance such as "10 %", "-10 +50 %", "J" or "GMV"';

/** Percent below and above by letter: reference section 2.4 (S19 for B to N and Q, S, T, Z; E, L, P, W from-memory). */
export const toleranceLetters: Readonly<Record<string, readonly [number, number]>> = {
  E: [0.005, 0.005],
  L: [0.01, 0.01],
  P: [0.02, 0.02],
  W: [0.05, 0.05],
  B: [0.1, 0.1],
  C: [0.25, 0.25],
  D: [0.5, 0.5],
  F: [1, 1],
  G: [2, 2],
  H: [3, 3],
  J: [5, 5],
  K: [10, 10],
  M: [20, 20],
  N: [30, 30],
  Q: [10, 30],
  T: [10, 50],
  S: [20, 50],
  Z: [20, 80],
};

/** The tolerance a capital of IEC 60062 stands for, or undefined. */
export function letterTolerance(letter: string): Tolerance | undefined {
  const percents = Object.hasOwn(toleranceLetters, letter) ? toleranceLetters[letter] : undefined;
  return percents && percentTolerance(...percents);
}

/** A tolerance from percents, exact to the digits written. */
export function percentTolerance(minusPercent: number, plusPercent = minusPercent): Tolerance {
  return { minus: Number(`${minusPercent}e-2`), plus: Number(`${plusPercent}e-2`) };
}

const percent = "(\\d+(?:\\.\\d+)?|\\.\\d+)";
const apart = new RegExp(`([+-])\\s*${percent}\\s*%?\\s*[,/]?\\s*([+-])\\s*${percent}\\s*(?:%|percent|pct)?`);
const even = new RegExp(
  `(?:\u00b1|\\+\\s?/?\\s?-|-\\s?/?\\s?\\+)?\\s*(?<![\\d.])${percent}\\s*(?:%|percent\\b|pct\\b)|(?:\u00b1|\\+\\s?/?\\s?-)\\s*${percent}(?!\\s*[A-Za-z\\d.])`,
);

/** The first tolerance in percent within a prepared text, and where it stands; null when there is none. */
export function findTolerance(text: string): { tolerance: Tolerance; offset: number; length: number } | null {
  const two = apart.exec(text);
  if (two && two[1] !== two[3]) {
    const first = Number(two[2]);
    const second = Number(two[4]);
    const tolerance = two[1] === "-" ? percentTolerance(first, second) : percentTolerance(second, first);
    return { tolerance, offset: two.index, length: two[0].length };
  }
  const one = even.exec(text);
  if (!one) return null;
  return { tolerance: percentTolerance(Number(one[1] ?? one[2])), offset: one.index, length: one[0].length };
}

/**
 * Reads a tolerance: "10 %", "+-10", "-10 +50 %", "+80/-20 %", a letter of IEC 60062, or "GMV" (guaranteed minimum value,
 * -0 +100 %). A bare number is percent. The result is in shares of the value (0.1 for 10 %). The minus side must lie below 100 %.
 */
export function parseTolerance(text: string): Result<Tolerance> {
  const prepared = prepareText(text, expected);
  if (!prepared.ok) return prepared;
  const body = prepared.value.trim();
  const start = prepared.value.indexOf(body);
  const fail = (why: string, nearest?: string) => problem(`${quoted(text.trim())} ${why}`, start, body.length, expected, nearest);
  if (/^gmv$/i.test(body)) return { ok: true, value: { minus: 0, plus: 1 } };
  const letter = letterTolerance(body);
  if (letter) return { ok: true, value: letter };
  if (letterTolerance(body.toUpperCase())) return fail("is not a tolerance letter", body.toUpperCase());
  const found = findTolerance(/^[\d.]+$/.test(body) ? `${body}%` : body);
  if (found?.offset !== 0 || found.length < body.length) {
    const number = /\d+(?:\.\d+)?/.exec(body)?.[0];
    return fail("is not a tolerance", number === undefined ? undefined : `${number} %`);
  }
  const { minus, plus } = found.tolerance;
  if (!(minus < 1)) return fail("goes down by 100 % or more");
  if (!(plus <= 10)) return fail("goes up by more than 1000 %");
  return { ok: true, value: found.tolerance };
}
