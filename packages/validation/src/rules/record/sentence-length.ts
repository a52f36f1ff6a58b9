import type { Complaint, RecordRule } from "../../model/rule.ts";
import { MOST_WORDS, mayBeLong } from "../../read/wordCount.ts";
import { eachText } from "../../shared/targets.ts";

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
    if (!record.survey.wordy) return [];
    const complaints: Complaint[] = [];
    eachText(record.value, (text, path) => {
      if (!mayBeLong(text)) return;
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
