/** Words that a sentence may have. */
export const MOST_WORDS = 40;
/** A text this short holds no sentence that is too long: that many words and their blanks. */
const LEAST_LENGTH = 2 * MOST_WORDS;

/** Whether a text may hold a sentence of more words than it may have; never false where it does. Blanks beyond ASCII count generously. */
export function mayBeLong(text: string): boolean {
  if (text.length < LEAST_LENGTH) return false;
  let blanks = 0;
  for (let k = 0; k < text.length; k++) {
    const code = text.charCodeAt(k);
    if (code <= 32 || code >= 0xa0) {
      if (++blanks >= MOST_WORDS) return true;
    } else if (isMark(code) && isBlank(text.charCodeAt(k + 1))) blanks = 0;
  }
  return false;
}

const isMark = (code: number): boolean => code === 46 || code === 58 || code === 59 || code === 33 || code === 63;
const isBlank = (code: number): boolean => code === 32 || (code >= 9 && code <= 13);
