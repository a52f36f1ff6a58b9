import { distance } from "fastest-levenshtein";

/** Shorter beginnings than this fit by chance. */
const LEAST_BEGINNING = 5;
/** Longer words than this are no slips of the pen. */
const LONGEST = 80;

// The same few thousand names are compared with every unknown one.
const FOLDED = new Map<string, string>();

/**
 * The candidate that a misspelt word most likely meant.
 *
 * Case, spaces, hyphens and underscores count for nothing; beyond that a third of the letters may differ, and one at least in
 * words of two or more. A word that lacks the end of one candidate alone stands for that one.
 *
 * @returns undefined when nothing is near
 */
export function nearestOf(word: string, candidates: Iterable<string>): string | undefined {
  if (word.length > LONGEST) return undefined;
  const folded = fold(word);
  const allowed = Math.max(folded.length >= 2 ? 1 : 0, Math.floor(folded.length / 3));
  let best: string | undefined;
  let bestDistance = allowed + 1;
  const begun: string[] = [];
  for (const candidate of candidates) {
    if (folded.length >= LEAST_BEGINNING && candidate !== word && fold(candidate).startsWith(folded)) begun.push(candidate);
    if (candidate === word || Math.abs(candidate.length - word.length) > allowed + 3) continue;
    const between = slips(folded, fold(candidate));
    if (between < bestDistance) {
      best = candidate;
      bestDistance = between;
    }
  }
  return bestDistance > 0 && begun.length === 1 ? begun[0] : best;
}

/** Edits between two words; two neighbouring letters exchanged count as one. */
function slips(a: string, b: string): number {
  const edits = distance(a, b);
  if (edits !== 2 || a.length !== b.length) return edits;
  const first = a.split("").findIndex((letter, index) => letter !== b[index]);
  return a[first] === b[first + 1] && a[first + 1] === b[first] ? 1 : edits;
}

/** A name as far as spelling habits do not matter. */
export function fold(word: string): string {
  let folded = FOLDED.get(word);
  if (folded === undefined) {
    folded = word.toLowerCase().replace(/[\s_-]+/g, "");
    if (FOLDED.size >= 20_000) FOLDED.clear();
    FOLDED.set(word, folded);
  }
  return folded;
}
