/** Pieces that the parser would read but the language does not have, with what to say of each. */
const REFUSED: readonly (readonly [RegExp, string])[] = [
  [/#/, "comments are not part of the language"],
  [/[\r\n]/, "a formula stands on one line"],
  [/;/, "several formulas in one are not part of the language"],
  [/%/, "percent and remainder are not part of the language; write 0.05 for 5 %"],
  [/\?\./, "only role.property can be read"],
  [/&&/, "that both hold is written with the word and"],
  [/\|\|/, "that one of two holds is written with the word or"],
  [/=</, "that one is at most the other is written <="],
  [/=>/, "that one is at least the other is written >="],
  [/\b0[xXbBoO]/, "numbers are written in decimal"],
];

/** The first piece of a text that is refused as it stands, before anything is parsed; undefined when there is none. */
export function refusedText(text: string): { message: string; offset: number; length: number } | undefined {
  const strange = /[^\x20-\x7e\r\n]/u.exec(text);
  const found = REFUSED.flatMap(([pattern, message]) => {
    const match = pattern.exec(text);
    return match === null ? [] : [{ message, offset: match.index, length: match[0].length }];
  });
  if (strange !== null) {
    const code = (strange[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
    found.push({ message: `the character U+${code} is not part of the language`, offset: strange.index, length: strange[0].length });
  }
  return found.sort((a, b) => a.offset - b.offset)[0];
}
