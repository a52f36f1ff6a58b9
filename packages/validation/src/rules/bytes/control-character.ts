import type { BytesRule } from "../../model/rule.ts";
import { codePoint, matchComplaints } from "../../shared/matchComplaints.ts";

const CONTROLS = /(?![\t\n\r])\p{Cc}/gu;

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
  check({ text, source, utf8 }) {
    if (!utf8 || text.search(CONTROLS) < 0) return [];
    return matchComplaints(source().text, CONTROLS, (character) => ({
      message: `a control character: ${codePoint(character)}`,
      expected: "printable text",
      rank: -0.5,
    }));
  },
};
