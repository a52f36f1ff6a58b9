import type { BytesRule } from "../../model/rule.ts";

// A JSON text or a CSV cell that begins with the mark of `npm run new`.
const BLANK = /(?<=")FILL: [^"\r\n]*|(?<=^|,)FILL: [^,\r\n]*/gm;

/** Nothing that `npm run new` left open is still open. */
export const blankFilled: BytesRule = {
  code: "UC-113",
  name: "blank-filled",
  scope: "bytes",
  severity: "error",
  title: "Every blank of a new record is filled in",
  why: "What the blank asks for would be printed in reports as if it were the answer.",
  bad: '"title": "FILL: What the trade calls the stage"',
  good: '"title": "Decoupling section"',
  check({ text, source }) {
    if (!text.includes("FILL: ")) return [];
    // Every one of them: they are a list of what is left to do.
    return [...source().text.matchAll(BLANK)].map((match) => ({
      at: { offset: match.index, length: match[0].length },
      message: "a blank that nobody has filled in",
      expected: match[0].slice("FILL: ".length),
      rank: -2,
    }));
  },
};
