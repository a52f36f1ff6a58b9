import { problem, quoted } from "./problem.ts";
import type { Result } from "./types.ts";

/** A marking or a reading is short; anything longer is a paste gone wrong. */
const longestText = 200;

/** Control, zero-width and direction-changing characters: invisible on a screen, so they can only mislead. */
const invisible = new RegExp(
  [
    "[\\u0000-\\u001f\\u007f-\\u009f\\u200b-\\u200f\\u202a-\\u202e\\u2060-\\u2069\\ufeff]",
    "[\\ud800-\\udbff](?![\\udc00-\\udfff])", // half of a surrogate pair
    "(?<![\\ud800-\\udbff])[\\udc00-\\udfff]",
  ].join("|"),
);

/** One character for one character, so that offsets into the prepared text are offsets into the text as written. */
const replacements: Readonly<Record<string, string>> = {
  "\u00b5": "u", // micro sign
  "\u03bc": "u", // Greek small mu
  "\u2126": "\u03a9", // ohm sign to Greek capital omega
  "\u03c9": "\u03a9", // small omega: ohm on some old drawings (S58)
  "\u2212": "-",
  "\u2010": "-",
  "\u2011": "-",
  "\u2013": "-",
  "\u2014": "-",
  "\u00a0": " ",
  "\u2009": " ",
  "\u202f": " ",
  "\u00d7": "x",
  "\u2215": "/",
  "\u2044": "/",
};

/**
 * The text with both code points of micro and ohm, the dashes and the special spaces brought to one spelling. Fails on an
 * empty text, on one above 200 characters and on invisible characters. `expected` says what the caller wanted.
 */
export function prepareText(text: string, expected: string): Result<string> {
  if (typeof text !== "string") return problem("not a text", 0, 0, expected);
  if (text.length > longestText) {
    return problem(
      `the text is ${text.length} characters long`,
      longestText,
      text.length - longestText,
      `${expected}, in at most ${longestText} characters`,
    );
  }
  const bad = invisible.exec(text);
  if (bad) {
    const cleaned = text.replace(new RegExp(invisible, "g"), " ").trim();
    const code = bad[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
    return problem(`${quoted(text)} holds an invisible character (U+${code})`, bad.index, bad[0].length, expected, cleaned || undefined);
  }
  if (text.trim() === "") return problem("nothing is written here", 0, text.length, expected);
  return { ok: true, value: Array.from(text, (character) => replacements[character] ?? character).join("") };
}
