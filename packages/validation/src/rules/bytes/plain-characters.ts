import type { BytesRule } from "../../model/rule.ts";
import { codePoint, matchComplaints } from "../../shared/matchComplaints.ts";

/** How the trade's other characters are written here. */
const WRITTEN: Readonly<Record<string, string>> = {
  "\u00b5": "u",
  "\u03bc": "u",
  "\u03a9": "ohm",
  "\u2126": "ohm",
  "\u00b0": "deg",
  "\u00b1": "+-",
  "\u00d7": "x",
  "\u2013": "-",
  "\u2014": "-",
  "\u2212": "-",
  "\u2018": "'",
  "\u2019": "'",
  "\u201c": '"',
  "\u201d": '"',
  "\u2026": "...",
  "\u00a0": "a plain space",
  "\u2009": "a plain space",
  "\u202f": "a plain space",
  "\u00b2": "^2",
  "\u00b3": "^3",
  "\u00bd": "1/2",
  "\u00bc": "1/4",
  "\u221a": "sqrt",
};
// Characters that hide and letters that pass for others have rules of their own.
const OTHER = /[\u0080-\u{10ffff}]/gu;
const NOT_OURS =
  /\p{Cc}|\p{Cf}|\p{Co}|[\u2028\u2029\ufffd]|\p{Script=Cyrillic}|\p{Script=Armenian}|\p{Script=Cherokee}|[\uff01-\uff5e]|(?![\u03bc\u03a9\u2126])\p{Script=Greek}/u;

/** ASCII only: uF, ohm, deg. */
export const plainCharacters: BytesRule = {
  code: "UC-111",
  name: "plain-characters",
  scope: "bytes",
  severity: "error",
  title: "Data is ASCII: uF, kohm, degC, 1/2",
  why: "Two spellings of one micro sign are two different words to a search.",
  bad: '"typical": "20 \u00b5F"',
  good: '"typical": "20 uF"',
  check({ text, source, utf8, ascii }) {
    if (!utf8 || ascii || text.search(OTHER) < 0) return [];
    return matchComplaints(source().text, OTHER, (character) => ({
      message: `a character beyond ASCII: ${codePoint(character)}`,
      received: character,
      expected: "ASCII",
      nearest: WRITTEN[character],
    })).filter(({ received = "" }) => !NOT_OURS.test(received));
  },
};
