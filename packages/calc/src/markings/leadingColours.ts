import { colourNamed } from "./colours.ts";
import { take, takeAt, type Workpiece } from "./workpiece.ts";

/** Takes the colour words a piece begins with: "yellow violet orange silver 1W". "no band" at their end is taken as well. */
export function leadingColours(piece: Workpiece): string[] {
  const names: string[] = [];
  let end = 0;
  for (;;) {
    const found = /^[\s|,]*([A-Za-z]+)(?=[\s,/-]|$)[\s,/-]*/.exec(piece.text.slice(end));
    if (!found || !colourNamed(found[1] ?? "")) break;
    names.push(found[1] ?? "");
    end += found[0].length;
  }
  if (names.length === 0) return names;
  takeAt(piece, 0, end);
  take(piece, /\bno (?:fourth )?(?:band|colou?r)\b/i);
  return names;
}
