import type { BytesRule } from "../../model/rule.ts";
import { codePoint, matchComplaints } from "../../shared/matchComplaints.ts";

// Bidirectional controls (Unicode 15 Bidi_Control), zero-width and other formatting characters, private use, a mark inside the file.
const HIDDEN = /[\u200b-\u200f\u2028-\u202e\u2060-\u2069\u061c\ufeff\u00ad\ufff9-\ufffb\p{Co}]|\p{Cf}/gu;

/** Nothing that hides or reorders what a reviewer reads. */
export const hiddenCharacter: BytesRule = {
  code: "UC-110",
  name: "hidden-character",
  scope: "bytes",
  severity: "error",
  title: "Nothing in a file is invisible or changes the direction of reading",
  why: "A reviewer would approve other text than the one that readers get.",
  bad: "U+202E before a figure",
  good: "the figure alone",
  check({ text, source, utf8, ascii }) {
    if (!utf8 || ascii || text.search(HIDDEN) < 0) return [];
    return matchComplaints(source().text, HIDDEN, (character) => ({
      message: `a character that cannot be seen: ${codePoint(character)}`,
      expected: "characters with a shape",
      rank: -0.5,
    }));
  },
};
