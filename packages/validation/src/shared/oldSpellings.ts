/** Old spellings of units behind a figure, and the modern ones (reference table old-units). A plain M may be megohm or a thousand: that is for a person. */
const OLD: readonly (readonly [RegExp, string])[] = [
  [/(?<=\d\s?)(?:mmfd?|uuf|mmF|\u00b5\u00b5f)\b/gi, "pF"],
  [/(?<=\d\s?)(?:mfd?|mF)\b/gi, "uF"],
  [/(?<=\d\s?)(?:Mc|mc)(?:\/s)?\b/g, "MHz"],
  [/(?<=\d\s?)(?:kc|KC)(?:\/s)?\b/g, "kHz"],
  [/(?<=\d\s?)(?:cps|c\/s)\b/g, "Hz"],
  [/(?<=\d\s?)(?:u|micro)mhos?\b/g, "uS"],
  [/(?<=\d\s?)mhos?\b/g, "S"],
  [/(?<=\d\s?)(?:megohms?|meg)\b/gi, "Mohm"],
];

/** What every old spelling has in it; most values have none. */
const SUSPECT = /m[mfc]|uuf|kc|c(?:ps|\/s)|mho|meg|\u00b5/i;

/** Whether a text may have an old spelling in it. */
export const hasOldSpelling = (text: string): boolean => SUSPECT.test(text);

/** The old spellings in a text, with the modern ones. */
export function oldSpellings(text: string): { offset: number; length: number; modern: string }[] {
  if (!hasOldSpelling(text)) return [];
  return OLD.flatMap(([pattern, modern]) =>
    [...text.matchAll(pattern)].map((match) => ({ offset: match.index, length: match[0].length, modern })),
  ).sort((a, b) => a.offset - b.offset);
}

/** The text with modern spellings; the same text when it has none to change. */
export function modernSpelling(text: string): string {
  return OLD.reduce((written, [pattern, modern]) => written.replace(pattern, modern), text);
}
