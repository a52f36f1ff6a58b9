import type { BodyEndDot } from "./decodeBodyEndDot.ts";
import { take, type Workpiece } from "./workpiece.ts";

/**
 * Takes a radial-lead resistor written by its places out of a piece: "body red, end green, dot orange, other end silver", the colour
 * before or behind the place. Null when no body is named.
 */
export function bodyEndDotText(piece: Workpiece): BodyEndDot | null {
  if (!/\bbody\b/i.test(piece.text)) return null;
  // Whoever begins with a place goes on with its colour.
  const behind = /^[\s|]*(?:body|other end|end|dot)\b/i.test(piece.text);
  const colourAt = (place: string): string | undefined => {
    const pattern = behind ? `\\b${place}\\s*[:=]?\\s*([A-Za-z]+)` : `\\b([A-Za-z]+)\\s+${place}\\b`;
    return take(piece, new RegExp(pattern, "i"))?.[1];
  };
  const otherEnd = colourAt("other end");
  const body = colourAt("body");
  const end = colourAt("end");
  const dot = colourAt("(?:dot|center band|centre band)");
  if (body === undefined) return null;
  return {
    body,
    ...(end === undefined ? {} : { end }),
    ...(dot === undefined ? {} : { dot }),
    ...(otherEnd === undefined ? {} : { otherEnd }),
  };
}
