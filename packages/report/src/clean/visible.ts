/** Blanks of every kind that would break a line or a table row. */
const breaks = /[\t\n\v\f\r\u0085\u2028\u2029]+/g;
/** Asks for a picture or for text of the character before it; says nothing on its own. */
const variationSelectors = /[\ufe0e\ufe0f]/g;
/** Controls, direction changers, zero-width and other characters without a shape, lone surrogates. */
const shapeless = /\p{Cc}|\p{Cf}|\p{Cs}|\p{Default_Ignorable_Code_Point}/gu;

/**
 * Text from a job as one line in which nothing is hidden: line breaks become blanks, characters without a shape become
 * their code point in brackets ("[U+202E]"). Every other character is kept.
 */
export function visible(text: string): string {
  return text.replace(breaks, " ").replace(variationSelectors, "").replace(shapeless, named);
}

function named(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  return `[U+${code.toString(16).toUpperCase().padStart(4, "0")}]`;
}
