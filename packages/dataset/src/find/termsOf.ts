import { PHRASES, WORDS } from "./synonyms.ts";

const STOP = new Set(
  "a an and are as at be been before behind by but do does for from get has have how i if in into is it its more my no not of on one or out so than that the their then there they this to too two up was what when where which while who why with you your".split(
    " ",
  ),
);

/** Endings that make no difference to what a word means, longest first, with what the stem keeps. */
const ENDINGS: readonly (readonly [string, string])[] = [
  ["ations", ""],
  ["ation", ""],
  ["ings", ""],
  ["ages", ""],
  ["age", ""],
  ["ing", ""],
  ["ies", "y"],
  ["ted", "t"],
  ["ed", ""],
  ["es", ""],
  ["ly", ""],
  ["er", ""],
  ["s", ""],
  ["y", ""],
  ["e", ""],
];
const SHORTEST_STEM = 3;

function stem(word: string): string {
  if (/\d/.test(word)) return word;
  for (const [ending, kept] of ENDINGS) {
    if (!word.endsWith(ending) || word.length - ending.length + kept.length < SHORTEST_STEM) continue;
    const cut = word.slice(0, word.length - ending.length) + kept;
    // humm -> hum, but ball stays: a doubled letter is the ending's doing only where an ending was cut.
    return /([bdgmnprt])\1$/.test(cut) ? cut.slice(0, -1) : cut;
  }
  return word;
}

const phrasePattern = new RegExp(`(?<![\\w-])(?:${PHRASES.map(([pattern]) => `(${pattern})`).join("|")})(?![\\w])`, "g");

/** A phrase of several words or with a sign in it, as one word. */
const joined = (plain: string): string =>
  plain.replace(phrasePattern, (_match, ...groups: (string | number | undefined)[]) => {
    const index = groups.findIndex((group) => typeof group === "string");
    return ` ${PHRASES[index]?.[1] ?? ""} `;
  });

/** What each word comes to: texts repeat theirs hundreds of times. */
const known = new Map<string, readonly string[]>();

function termsOfWord(word: string): readonly string[] {
  const before = known.get(word);
  if (before !== undefined) return before;
  const terms = STOP.has(word) ? [] : (WORDS.get(word) ?? stem(word)).split(" ");
  known.set(word, terms);
  return terms;
}

/**
 * The terms of a text as they are indexed and asked for: lower case, the trade's synonyms as one word, endings cut, stop words left
 * out.
 *
 * @returns terms in the order of the text, repeats kept
 */
export function termsOf(text: string): string[] {
  return (joined(text.toLowerCase()).match(/[a-z0-9µμ]+/g) ?? []).flatMap(termsOfWord);
}
