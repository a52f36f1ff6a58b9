/** A stretch of a formula's text. */
export interface FormulaPlace {
  /** 0-based, in UTF-16 units. */
  offset: number;
  length: number;
}

/** What spelling leaves open: spaces, parentheses that change nothing, kinds of quotes. */
const OPEN = /[\s()"']/;

const QUOTE = /["']/;

/** A number that the parser has made infinite no longer looks as it was written. */
function tooLarge(text: string): FormulaPlace | undefined {
  const numbers = text.matchAll(/[0-9][0-9.]*(?:e[+-]?[0-9]+)?/gi);
  const match = [...numbers].find(([written]) => Number(written) === Number.POSITIVE_INFINITY);
  return match === undefined ? undefined : { offset: match.index, length: match[0].length };
}

/** Where the parser says that it stopped: it counts from 1, and may point behind the end. */
function charNamed(message: string, text: string): FormulaPlace | undefined {
  const named = /\(char (\d+)\)/.exec(message)?.[1];
  if (named === undefined) return undefined;
  const offset = Math.max(0, Math.min(Number(named) - 1, text.length - 1));
  return { offset, length: Math.min(1, text.length) };
}

/**
 * Where in a formula a refused piece stands. The parser writes pieces in its own spelling (`2 x` for `2x`), so that spaces,
 * parentheses and quotes do not count.
 *
 * @returns the whole text when the piece cannot be found
 */
export function placeInFormula(text: string, received: string, message = ""): FormulaPlace {
  const stopped = charNamed(message, text);
  if (stopped !== undefined) return stopped;
  const kept = Array.from({ length: text.length }, (_, index) => index).filter((index) => !OPEN.test(text[index] ?? ""));
  const squeezed = kept.map((index) => text[index]).join("");
  const wanted = received
    .split("")
    .filter((letter) => !OPEN.test(letter))
    .join("");
  const at = wanted === "" ? -1 : squeezed.indexOf(wanted);
  if (at < 0) return tooLarge(text) ?? { offset: 0, length: text.length };
  const [start = 0, end = 0] = [kept[at], kept[at + wanted.length - 1]];
  const first = QUOTE.test(received.charAt(0)) && QUOTE.test(text.charAt(start - 1)) ? start - 1 : start;
  const last = QUOTE.test(received.at(-1) ?? "") && QUOTE.test(text.charAt(end + 1)) ? end + 1 : end;
  return { offset: first, length: last - first + 1 };
}
