import type { FindDocument } from "./foundDocument.ts";
import { termsOf } from "./termsOf.ts";

/** Sentences of a text; a point before a figure or within an abbreviation ends none. */
const sentencesOf = (text: string): string[] => text.split(/(?<=[.!?;])\s+(?=[A-Z0-9(])/).map((piece) => piece.trim());

/**
 * The sentence of a document that holds most of the terms that its title does not hold already; of several the first. Without any,
 * how the document begins.
 *
 * @param wanted terms as `termsOf` gives them
 */
export function quoteOf({ texts, title }: FindDocument, wanted: ReadonlySet<string>): string {
  const said = new Set(termsOf(title));
  const terms = new Set([...wanted].filter((term) => !said.has(term)));
  let best = "";
  let most = 0;
  for (const sentence of texts.flatMap(sentencesOf)) {
    const held = new Set(termsOf(sentence).filter((term) => terms.has(term))).size;
    if (held > most) [best, most] = [sentence, held];
  }
  return best || sentencesOf(texts[0] ?? title)[0] || title;
}
