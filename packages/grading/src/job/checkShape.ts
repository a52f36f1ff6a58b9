import { type Placed, type Problems, type SchemaWords, schemaProblems, spanOf } from "@underchassis/source-text";
import { PATTERN_WORDS, violationsOf } from "./jobSchema.ts";
import type { Path } from "./loadedJob.ts";
import { pathWords } from "./pathWords.ts";
import { prefixedQuantityWord, quantityWord } from "./quantityWords.ts";

const WORDS: SchemaWords = {
  noun: "job",
  patterns: PATTERN_WORDS,
  choice(written) {
    const prefixed = prefixedQuantityWord(written);
    // Whoever writes `mA DC` for a quantity has left the unit out of the value.
    if (prefixed !== undefined) return { word: prefixed, help: "the unit stands beside the value: 65 mA" };
    const word = quantityWord(written);
    return word === undefined ? undefined : { word };
  },
};

/**
 * Holds the merged job against its schema and reports every fault at the exact key or value.
 *
 * @returns the paths of what does not fit
 */
export function checkShape(job: Placed, problems: Problems): Path[] {
  return schemaProblems(job.value, violationsOf(job.value), WORDS, (path) => pathWords(path, job.value)).map(
    ({ at, part, misshapen, problem }) => {
      problems.add(spanOf(job.place, at, part), problem);
      return misshapen;
    },
  );
}
