import { percentTolerance } from "../quantities/parseTolerance.ts";
import { problem, quoted } from "../quantities/problem.ts";
import type { Result } from "../quantities/types.ts";
import type { CodeReading } from "./codeReading.ts";
import { type Colour, colourDigits, colourExponents, colourNamed } from "./colours.ts";

const expected = "the colours of body, end and dot, and of the other end if it is gold or silver";

/** Where each colour of a radial-lead or early axial resistor was seen; what was not seen is left out. */
export interface BodyEndDot {
  body: string;
  /** The painted end. Not seen: the body's colour. */
  end?: string;
  /** Dot or band at the middle of the body. Not seen: the body's colour. */
  dot?: string;
  /** Gold 5 %, silver 10 %, unpainted 20 %. */
  otherEnd?: string;
}

/** Tolerance of the other end (S6). */
export const endPercents: Readonly<Partial<Record<Colour, number>>> = { gold: 5, silver: 10, none: 20 };

/**
 * Ohms of a resistor marked body-end-dot (RMA from 1930, S6): body first figure, end second figure, dot the power of ten. A dot or
 * end that cannot be seen has the body's colour (from-memory, widely stated).
 */
export function decodeBodyEndDot(marks: BodyEndDot): Result<CodeReading> {
  const colour = (name: string, place: string): Result<Colour> => {
    const found = colourNamed(name);
    return found
      ? { ok: true, value: found }
      : problem(`${quoted(name)} at the ${place} is not a colour of the code`, 0, name.length, expected);
  };
  const notes: string[] = [];
  const body = colour(marks.body, "body");
  if (!body.ok) return body;
  const end = marks.end === undefined ? body : colour(marks.end, "end");
  if (!end.ok) return end;
  const dot = marks.dot === undefined ? body : colour(marks.dot, "dot");
  if (!dot.ok) return dot;
  const other = colour(marks.otherEnd ?? "none", "other end");
  if (!other.ok) return other;
  // An end painted gold or silver is the tolerance, whichever end it was called.
  const swapped = (end.value === "gold" || end.value === "silver") && colourDigits[other.value] !== undefined;
  const [figureEnd, toleranceEnd] = swapped ? [other.value, end.value] : [end.value, other.value];
  if (marks.end === undefined) notes.push("no end seen: taken as the body's colour");
  if (marks.dot === undefined) notes.push("no dot seen: taken as the body's colour");
  if (swapped) notes.push("the gold or silver end is the tolerance");
  const first = colourDigits[body.value];
  const second = colourDigits[figureEnd];
  const exponent = colourExponents[dot.value];
  const percent = endPercents[toleranceEnd];
  if (first === undefined) return problem(`a ${body.value} body is no figure`, 0, marks.body.length, expected);
  if (first === 0)
    return problem("a black body gives a first figure of 0: black bodies are uninsulated parts with bands", 0, marks.body.length, expected);
  if (second === undefined) return problem(`a ${figureEnd} end is no figure`, 0, 0, expected);
  if (exponent === undefined) return problem(`a ${dot.value} dot is no power of ten`, 0, 0, expected);
  if (percent === undefined) return problem(`a ${toleranceEnd} end is no tolerance`, 0, 0, expected, "gold, silver or none");
  return {
    ok: true,
    value: {
      value: Number(`${first}${second}e${exponent}`),
      dimension: "resistance",
      tolerance: percentTolerance(percent),
      toleranceWritten: toleranceEnd !== "none",
      family: "body-end-dot",
      because: "body first figure, end second figure, dot power of ten",
      notes,
    },
  };
}
