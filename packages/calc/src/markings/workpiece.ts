import { prepareText } from "../quantities/prepareText.ts";
import { problem, quoted } from "../quantities/problem.ts";
import type { MarkedKind, Marking, ReadingProblem, Result } from "../quantities/types.ts";

/** A marking on its way to being read: what is understood is taken out, what remains is still to be read. */
export interface Workpiece {
  kind: MarkedKind;
  asWritten: string;
  /** As long as the text as written, so that offsets agree; what was taken out is a bar and blanks. */
  text: string;
  notes: string[];
  alternatives: { reading: string; value: number; because: string }[];
}

/** What each kind's marking looks like, for problems. */
export const markingExpected: Readonly<Record<MarkedKind, string>> = {
  resistor: 'a resistor marking such as "47k 1W 10%", "4R7 5W" or "yellow violet orange silver"',
  capacitor: 'a capacitor marking such as ".05 600V", "40 mfd 450V" or "250 mmf mica"',
  inductor: 'a choke or coil marking such as "8 H 150 mA 200 ohm" or "2.5 mH"',
  fuse: 'a fuse marking such as "2 A slow", "T1.6A" or "3AG 1 1/2 A fast"',
  "transformer-winding": 'a winding such as "325-0-325 V 120 mA" or "6.3 V 3.5 A"',
  rectifier: 'a rectifier such as "5Y3GT", "1N4007" or "silicon 1000 V 1 A"',
  thermistor: 'an inrush limiter such as "50 ohm 2 A 20 J"',
  lamp: 'a lamp such as "6.3 V 0.15 A" or "40 W 120 V"',
  load: 'a load such as "60 mA", "5 kohm" or "60 mA at 250 V"',
};

/** A sign before the first figure: hyphen, minus or dash. */
const leadingMinus = /^\s*[-\u2212\u2013]\s*(?=\.?\d)/;

/** A fresh workpiece, or why the text cannot be a marking at all: nothing that a part is marked with can be negative. */
export function workpiece(text: string, kind: MarkedKind): Result<Workpiece> {
  const prepared = prepareText(text, markingExpected[kind]);
  if (!prepared.ok) return prepared;
  const minus = leadingMinus.exec(prepared.value)?.[0];
  if (minus !== undefined) {
    const body = text.slice(minus.length).trim();
    return problem(`${quoted(text.trim())} is negative`, minus.search(/\S/), text.trim().length, markingExpected[kind], body);
  }
  return { ok: true, value: { kind, asWritten: text, text: prepared.value, notes: [], alternatives: [] } };
}

/** Takes the first match out of the piece and gives it back, or null. */
export function take(piece: Workpiece, pattern: RegExp): RegExpExecArray | null {
  const found = pattern.exec(piece.text);
  if (found) takeAt(piece, found.index, found[0].length);
  return found;
}

/** Takes a stretch out of the piece. */
export function takeAt(piece: Workpiece, offset: number, length: number): void {
  if (length === 0) return;
  piece.text = `${piece.text.slice(0, offset)}|${" ".repeat(length - 1)}${piece.text.slice(offset + length)}`;
}

/** The first entry of a list whose pattern is found; it is taken out. */
export function takeWord<T>(piece: Workpiece, list: readonly (readonly [RegExp, T])[]): T | undefined {
  for (const [pattern, meaning] of list) if (take(piece, pattern)) return meaning;
  return undefined;
}

/** The marking made of a piece and what was read from it. */
export function marking(piece: Workpiece, fields: Omit<Marking, "kind" | "asWritten" | "alternatives" | "notes">): Result<Marking> {
  return {
    ok: true,
    value: { kind: piece.kind, asWritten: piece.asWritten, ...fields, alternatives: piece.alternatives, notes: piece.notes },
  };
}

/** A problem with the whole marking. */
export function unreadable(piece: Workpiece, why: string, nearest?: string): { ok: false; problem: ReadingProblem } {
  const body = piece.asWritten.trim();
  return problem(`${quoted(body)} ${why}`, piece.asWritten.indexOf(body), body.length, markingExpected[piece.kind], nearest);
}
