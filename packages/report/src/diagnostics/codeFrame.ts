import { visible } from "../clean/visible.ts";
import { textWidth } from "../text/wrapText.ts";

/** What is shown of a line: at most this many UTF-16 units before and after the place. */
const unitsBefore = 48;
const unitsAfter = 72;

export interface CodeFrame {
  /** Source text around the place, nothing hidden in it, "..." where it was cut. */
  source: string;
  /** Blanks up to the place, then one caret a column; "" when no column is known. */
  underline: string;
}

/** Moves an offset out of the middle of a surrogate pair, so that no half character is shown. */
function whole(line: string, offset: number): number {
  const code = line.charCodeAt(offset);
  const isInside = code >= 0xdc00 && code <= 0xdfff && offset > 0;
  return isInside ? offset - 1 : offset;
}

/**
 * The piece of `line` around 1-based `column` (UTF-16 units) with an underline of `length` units, at least one caret.
 * A column beyond the end points behind the last character.
 */
export function codeFrame(line: string, column: number | undefined, length = 1): CodeFrame {
  const start = whole(line, Math.min(line.length, Math.max(0, (column ?? 1) - 1)));
  const from = whole(line, Math.max(0, start - unitsBefore));
  const to = whole(line, Math.min(line.length, start + unitsAfter));
  // At least the whole character at the place, should the length end within it.
  const character = String.fromCodePoint(line.codePointAt(start) ?? 0).length;
  const end = Math.min(to, Math.max(start + character, whole(line, start + length)));
  const lead = `${from > 0 ? "..." : ""}${visible(line.slice(from, start))}`;
  const place = visible(line.slice(start, end));
  const source = `${lead}${place}${visible(line.slice(end, to))}${to < line.length ? "..." : ""}`;
  if (column === undefined) return { source, underline: "" };
  return { source, underline: " ".repeat(textWidth(lead)) + "^".repeat(Math.max(1, textWidth(place))) };
}
