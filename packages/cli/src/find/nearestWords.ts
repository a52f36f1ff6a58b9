import { distance } from "fastest-levenshtein";

/** Words longer than this are no slips of the pen. */
const LONGEST = 40;
const MOST = 3;

const allowed = (word: string): number => Math.max(1, Math.floor(word.length / 3));

/**
 * The words that each word of a question may have meant: those at the fewest edits, when these are no more than a third of its letters, and one at least.
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
        .filter((candidate) => Math.abs(candidate.length - word.length) <= allowed(word))
        .map((candidate) => ({ candidate, edits: distance(word, candidate) }))
        .filter(({ edits }) => edits <= allowed(word))
        .sort((a, b) => a.edits - b.edits || (a.candidate < b.candidate ? -1 : 1))
        .slice(0, MOST)
        .map(({ candidate }) => candidate),
    );
  return [...new Set(near)];
}
