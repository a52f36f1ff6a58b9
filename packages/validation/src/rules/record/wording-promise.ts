import type { RecordRule } from "../../model/rule.ts";
import { eachMatch } from "../../shared/eachMatch.ts";

// Proper names of standards and of parts classes ("safety capacitor") describe; a promise is what is barred.
const PROMISE =
  /\b(?:safe|safely|unsafe|harmless|(?:risk|danger|hazard)[- ]free|foolproof|no (?:danger|risk|hazard)|not dangerous|cannot (?:hurt|harm))\b/gi;
/** What some word of every promise holds: looked for first, since it is found sooner than where words begin. */
const STEMS = /safe|harmless|[- ]free|foolproof|no (?:danger|risk|hazard)|not dangerous|cannot (?:hurt|harm)/i;

/** No equipment is called safe. */
export const wordingPromise: RecordRule = {
  code: "UC-412",
  name: "wording-promise",
  scope: "record",
  severity: "error",
  title: "No text calls equipment, or work on it, safe",
  why: "A record cannot know the chassis in front of its reader; somebody may trust the word.",
  bad: '"text": "The chassis is then safe to touch."',
  good: '"text": "Measure before touching: below 1 V on every can."',
  check: (record) =>
    eachMatch(
      record,
      PROMISE,
      (word) => ({
        message: `"${word}" promises what no record can know`,
        received: word,
        expected: "what was measured, or what to do first",
      }),
      (text) => STEMS.test(text),
    ),
};
