import type { BytesRule } from "../../model/rule.ts";
import { codePoint, matchComplaints } from "../../shared/matchComplaints.ts";

// Tab and line ends have a use. The class is written out, since a property of Unicode is slow to look for in every file.
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROLS = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/g;

const DELETE = "\u007f";

/** No control characters. */
export const controlCharacter: BytesRule = {
  code: "UC-109",
  name: "control-character",
  scope: "bytes",
  severity: "error",
  title: "Files hold no control characters",
  why: "They steer terminals and cut texts short, and nobody sees them.",
  bad: "a NUL in a title",
  good: "a title of letters",
  check({ text, source, utf8, ascii, value }) {
    // JSON that was read has none below the blank.
    if (value !== undefined && ascii && !text.includes(DELETE)) return [];
    if (!utf8 || text.search(CONTROLS) < 0) return [];
    return matchComplaints(source().text, CONTROLS, (character) => ({
      message: `a control character: ${codePoint(character)}`,
      expected: "printable text",
      rank: -0.5,
    }));
  },
};
