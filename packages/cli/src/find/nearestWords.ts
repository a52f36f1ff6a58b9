import { distance } from "fastest-levenshtein";

/** Words longer than this are no slips of the pen. */
const LONGEST = 40;
const MOST = 3;

/**
 * The words that each word of a question may have meant: those at the fewest edits, when these are no more than half of its letters.
 *
 * @param words every word that there is
 * @returns words that there are, nearest first, without repeats
 */
export function nearestWords(question: string, words: readonly string[]): string[] {
  const asked = question.toLowerCase().match(/[\p{L}\p{N}+-]{2,}/gu) ?? [];
  const near = asked
    .filter((word) => word.length <= LONGEST)
    .flatMap((word) =>
      words
        .filter((candidate) => Math.abs(candidate.length - word.length) <= word.length / 2)
        .map((candidate) => ({ candidate, edits: distance(word, candidate) }))
        .filter(({ edits }) => edits <= word.length / 2)
        .sort((a, b) => a.edits - b.edits || (a.candidate < b.candidate ? -1 : 1))
        .slice(0, MOST)
        .map(({ candidate }) => candidate),
    );
  return [...new Set(near)];
}
