import { problem, quoted } from "../../quantities/problem.ts";
import type { Result } from "../../quantities/types.ts";
import { bodyEndDotText } from "../bodyEndDotText.ts";
import { dielectrics } from "../capacitorMarking.ts";
import { decodeBodyEndDot } from "../decodeBodyEndDot.ts";
import { leadingColours } from "../leadingColours.ts";
import { parseMarking } from "../parseMarking.ts";
import { compositions } from "../resistorMarking.ts";
import { take, takeWord, unreadable, type Workpiece, workpiece } from "../workpiece.ts";
import { type Beside, decodeColours, type Ranked } from "./decodeColours.ts";
import type { DecodeContext, Decoded, DecodedReading } from "./decoded.ts";
import { decodePrinted } from "./decodePrinted.ts";
import { familyFacts, isOfItsTime, yearsOf } from "./markingFamily.ts";
import { misspeltColour } from "./misspeltColour.ts";
import { writeBack } from "./writeBack.ts";

/** What stands beside the colours: make, volts, watts, and whether they are dots. Taken out of the piece. */
function besideOf(piece: Workpiece, text: string, context: DecodeContext): Beside {
  const composition = takeWord(piece, compositions) ?? context.composition;
  const dielectric = composition ? undefined : takeWord(piece, dielectrics);
  const dots = take(piece, /\bdots?\b/i) !== null;
  take(piece, /\b(?:bands?|resistor|capacitor|tubular|mou?ld(?:ed)?)\b/i);
  const marked = dielectric ? undefined : parseMarking(text, "resistor", context);
  const ratedWatts = marked?.ok ? marked.value.ratedWatts : undefined;
  return { dots, ...(composition && { composition }), ...(dielectric && { dielectric }), ...(ratedWatts !== undefined && { ratedWatts }) };
}

function bodyEndDot(piece: Workpiece): Result<Ranked[]> | undefined {
  const marks = bodyEndDotText(piece);
  if (!marks) return undefined;
  const result = decodeBodyEndDot(marks);
  if (!result.ok) return unreadable(piece, `cannot be read body-end-dot: ${result.problem.message}`, result.problem.nearest);
  const { family: code, ...rest } = result.value;
  const reading: DecodedReading = {
    ...rest,
    kind: "resistor",
    dimension: "resistance",
    family: "body-end-dot",
    code,
    written: writeBack(rest.value, "resistance", rest.tolerance),
    source: familyFacts["body-end-dot"].source,
  };
  return { ok: true, value: [{ reading, score: 5 }] };
}

function candidates(text: string, piece: Workpiece, context: DecodeContext): Result<Ranked[]> {
  if (context.family !== "printed") {
    const places = context.kind === "capacitor" ? undefined : bodyEndDot(piece);
    if (places) return places;
    const beside = besideOf(piece, text, context);
    const names = leadingColours(piece);
    const misspelt = names.length > 0 || /^\s*[A-Za-z]/.test(text) ? misspeltColour(text) : undefined;
    if (misspelt) return { ok: false, problem: misspelt };
    if (names.length > 0) return decodeColours(names, beside, context);
    if (context.family !== undefined) {
      const expected = `the colours of ${context.family} in reading order`;
      return problem(`${quoted(text.trim())} names no colours`, 0, text.length, expected, "yellow violet orange");
    }
  }
  return decodePrinted(text, context);
}

/** Readings of the part's time; all of them, and a word on it, when none is. */
function ofItsTime(list: readonly Ranked[], era: number | undefined): readonly Ranked[] {
  const fitting = list.filter(({ reading }) => isOfItsTime(reading.family, era));
  if (fitting.length > 0) return fitting;
  return list.map(({ reading, score }) => {
    const note = `this code is met roughly ${yearsOf(reading.family)}, not in ${era}`;
    return { score, reading: { ...reading, notes: [note, ...reading.notes] } };
  });
}

/** The same part said twice: by value, tolerance, volts, section and code. */
const identity = ({ kind, value, tolerance, ratedVolts, section, code, characteristic }: DecodedReading): string =>
  [kind, value.toPrecision(9), tolerance.minus, tolerance.plus, ratedVolts, section, code, characteristic].join(" ");

/**
 * Every reading of a resistor's or capacitor's marking as it stands: colour bands, body-end-dot, dots, letter codes, three-figure codes,
 * printed values, the sections of a can. Ohms and farads; most likely first, each with why. With an `era` (a year) only the
 * codes of that time are read; a declared `family` admits no other. Never throws: what cannot be read comes back with its place, what
 * was expected and the nearest that would work. Sources: each reading names its own; the order of likelihood is common-practice.
 */
export function decode(text: string, context: DecodeContext = {}): Result<Decoded> {
  const piece = workpiece(
    text,
    context.kind ?? (context.family && familyFacts[context.family].kind === "capacitor" ? "capacitor" : "resistor"),
  );
  if (!piece.ok) return piece;
  const found = candidates(text, piece.value, context);
  if (!found.ok) return found;
  const ordered = ofItsTime(found.value, context.era).toSorted((one, other) => other.score - one.score);
  const readings = [...new Map(ordered.map(({ reading }) => [identity(reading), reading])).values()];
  // A can's sections are parts beside each other, not readings against each other.
  const sections = new Set(readings.map(({ section }) => section));
  const values = new Set(readings.map(({ kind, value, section }) => `${kind} ${value.toPrecision(9)} ${section}`));
  return { ok: true, value: { asWritten: text, readings, ambiguous: values.size > sections.size } };
}
