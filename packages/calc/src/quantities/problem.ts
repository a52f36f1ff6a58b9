import type { ReadingProblem } from "./types.ts";

/** Longest text a reading problem quotes. */
const longestQuote = 40;

/** A text in double quotes for a message: control characters escaped, cut to 40 characters. */
export function quoted(text: string): string {
  const cut = text.length > longestQuote ? `${text.slice(0, longestQuote - 3)}...` : text;
  return JSON.stringify(cut);
}

/** A failed result. `offset` and `length` count UTF-16 units of the text as it was given. */
export function problem(
  message: string,
  offset: number,
  length: number,
  expected: string,
  nearest?: string,
): { ok: false; problem: ReadingProblem } {
  return { ok: false, problem: { message, offset, length, expected, ...(nearest === undefined ? {} : { nearest }) } };
}
