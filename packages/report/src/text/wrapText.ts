const combining = /\p{M}/u;
/** East Asian wide blocks (Unicode Standard Annex 11) and pictures. */
const wide =
  /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}|[\u{20000}-\u{3fffd}]/u;
/** Plain ASCII, the common case, takes one column a character. */
const ascii = /^[ -~]*$/;

/** Columns that a character takes on a terminal: 0 for a combining mark, 2 for a wide one, else 1. */
function columnsOf(character: string): number {
  if (character <= "~") return 1;
  if (combining.test(character)) return 0;
  return wide.test(character) ? 2 : 1;
}

/** Terminal columns that a text takes. It must hold no control characters. */
export function textWidth(text: string): number {
  if (ascii.test(text)) return text.length;
  return Array.from(text).reduce((sum, character) => sum + columnsOf(character), 0);
}

/** A word cut into pieces of at most `width` columns; nothing is lost. */
function pieces(word: string, width: number): string[] {
  const result: string[] = [];
  let piece = "";
  let used = 0;
  for (const character of word) {
    const columns = columnsOf(character);
    if (used + columns > width && piece) {
      result.push(piece);
      piece = "";
      used = 0;
    }
    piece += character;
    used += columns;
  }
  result.push(piece);
  return result;
}

/** Lines of at most `width` columns, broken at blanks, within a word only where it is longer than a line. */
export function wrapText(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ").filter(Boolean)) {
    const joined = line ? `${line} ${word}` : word;
    if (textWidth(joined) <= width) {
      line = joined;
      continue;
    }
    if (line) lines.push(line);
    const cut = textWidth(word) <= width ? [word] : pieces(word, width);
    lines.push(...cut.slice(0, -1));
    line = cut.at(-1) ?? "";
  }
  lines.push(line);
  return lines;
}

/** `text` wrapped behind `lead`, further lines under the first word: a list entry or a labelled line. */
export function hang(lead: string, text: string, width: number): string[] {
  const indent = " ".repeat(textWidth(lead));
  return wrapText(text, Math.max(16, width - indent.length)).map((line, index) => `${index === 0 ? lead : indent}${line}`.trimEnd());
}
