/** Text as one line in which nothing is hidden and nothing steers a terminal: what has no shape becomes its code point, [U+202E]. */
export function visible(text: string): string {
  return text.replace(/\t/g, " ").replace(/\p{Cc}|\p{Cf}|\p{Cs}|\p{Co}|\p{Default_Ignorable_Code_Point}|[\u2028\u2029]/gu, named);
}

function named(character: string): string {
  return `[U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}]`;
}
