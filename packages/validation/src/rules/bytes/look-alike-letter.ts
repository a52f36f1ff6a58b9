import type { BytesRule } from "../../model/rule.ts";
import { codePoint, matchComplaints } from "../../shared/matchComplaints.ts";

// Letters of other scripts that pass for Latin ones, and the full-width forms. Greek mu and omega are units, not disguises.
const FOREIGN = /\p{Script=Cyrillic}|\p{Script=Armenian}|\p{Script=Cherokee}|[\uff01-\uff5e]|(?![\u03bc\u03a9\u2126])\p{Script=Greek}/gu;

/** The Latin letter that a letter of another script passes for (Unicode confusables, the common ones). */
const LATIN: ReadonlyMap<string, string> = new Map(
  [..."аaеeоoрpсcуyхxіiјjѕsԁdһhԛqԝwАAВBЕEКKМMНHОOРPСCТTУYХXІIЈJЅSαaοoνvρpΑAΒBΕEΖZΗHΙIΚKΜMΝNΟOΡPΤTΥYΧX"].flatMap(
    (letter, index, all): [string, string][] => (index % 2 === 0 ? [[letter, all[index + 1] ?? ""]] : []),
  ),
);

/** No letter that passes for another. */
export const lookAlikeLetter: BytesRule = {
  code: "UC-112",
  name: "look-alike-letter",
  scope: "bytes",
  severity: "error",
  title: "No letter of another script stands among Latin ones",
  why: "An id with a foreign letter looks right and is found by nobody.",
  bad: '"id": "b-pl\u0443s"',
  good: '"id": "b-plus"',
  check({ text, source, utf8, ascii }) {
    if (!utf8 || ascii || text.search(FOREIGN) < 0) return [];
    return matchComplaints(source().text, FOREIGN, (letter) => ({
      message: `a letter of another script: ${codePoint(letter)}`,
      received: letter,
      expected: "the Latin letter",
      nearest:
        LATIN.get(letter) ?? (letter >= "\uff01" && letter <= "\uff5e" ? String.fromCodePoint(letter.codePointAt(0)! - 0xfee0) : undefined),
      rank: -0.5,
    }));
  },
};
