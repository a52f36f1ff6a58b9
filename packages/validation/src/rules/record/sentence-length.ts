import type { Complaint, RecordRule } from "../../model/rule.ts";
import { eachText } from "../../shared/targets.ts";

const MOST_WORDS = 40;
/** A text this short holds no sentence that is too long: forty words and their blanks. */
const LEAST_LENGTH = 2 * MOST_WORDS;

/** Whether a text has more words than a sentence may: most have not, whatever their sentences. */
function hasWords(text: string): boolean {
  let blanks = 0;
  for (let k = 0; k < text.length; k++) if (text.charCodeAt(k) <= 32) blanks++;
  // Other blanks than these are rare: where there are any, the sentences are looked at.
  return blanks >= MOST_WORDS || /[\u00a0\u2000-\u200a\u2028\u2029\u3000\ufeff]/.test(text);
}

/** Sentences are short. */
export const sentenceLength: RecordRule = {
  code: "UC-413",
  name: "sentence-length",
  scope: "record",
  severity: "error",
  title: `No sentence has more than ${MOST_WORDS} words`,
  why: "Records are read at the bench, with a probe in one hand.",
  bad: "one sentence of sixty words",
  good: "three sentences of twenty",
  check(record) {
    const complaints: Complaint[] = [];
    eachText(record.value, (text, path) => {
      if (text.length < LEAST_LENGTH || !hasWords(text)) return;
      for (const { 0: sentence, index } of text.matchAll(/[^.:;!?]+(?:[.:;!?](?!\s)[^.:;!?]*)*[.:;!?]*/g)) {
        const words = sentence.trim().split(/\s+/).length;
        if (words <= MOST_WORDS) continue;
        const start = index + sentence.length - sentence.trimStart().length;
        complaints.push({
          at: { path: path(), within: { offset: start, length: sentence.trim().length } },
          message: "a sentence too long to be read at the bench",
          received: `${words} words`,
          expected: `at most ${MOST_WORDS}`,
        });
      }
    });
    return complaints;
  },
};
