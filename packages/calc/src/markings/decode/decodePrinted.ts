import { formatQuantity } from "../../quantities/formatQuantity.ts";
import type { Marking, ReadingProblem, Result } from "../../quantities/types.ts";
import { valueLikelihood } from "../decodeCapacitorColours.ts";
import { parseMarking } from "../parseMarking.ts";
import { parseSections } from "../parseSections.ts";
import type { Ranked } from "./decodeColours.ts";
import type { DecodeContext, DecodedReading } from "./decoded.ts";
import { familyFacts } from "./markingFamily.ts";
import { writeBack } from "./writeBack.ts";

type Kind = DecodedReading["kind"];

/** Spellings that only one kind of part carries. */
const tellTale: Readonly<Record<Kind, RegExp>> = {
  resistor: /ohm|\u03a9|\u2126|\bmeg|\d\s*[kKMRG](?![A-Za-z])|\d[kKMRG]\d|\bR\d|\d\s*W\b|watt|wire ?wound|carbon|metal (?:film|oxide)/i,
  capacitor:
    /m?mfd?\b|\d\s*[unp]F?\b|\d[unp]\d|\b[unp]\d|\d\s*W?VD?C?\b|volt|^\s*[.\d]+\s*\/\s*\d|paper|mica|ceramic|electrolytic|\bfilm\b|\b[XY][1-4]\b|\bNP0|C0G/i,
};
/** Only a resistor has watts: with them a capacitor is out of the question. */
const watts = /\d\s*W\b|watt/i;
/** "104K", "472M", "473J": on a capacitor the letter is the tolerance. */
const lettered = /^\s*\d{3}[BCDFGJKM]\b/;

/** Resistors outside these are hardly met. */
const usualOhms = { least: 0.1, most: 22e6 };

function score(kind: Kind, value: number, text: string): number {
  const proper = tellTale[kind].test(text) && !(kind === "resistor" && lettered.test(text));
  const odd = kind === "resistor" && value !== 0 && (value < usualOhms.least || value > usualOhms.most);
  return (proper ? 4 : 0) + valueLikelihood(value) - (odd ? 4 : 0);
}

function readingOf(kind: Kind, marking: Marking, value: number, because: string, section: number | undefined): DecodedReading {
  const dimension = kind === "resistor" ? "resistance" : "capacitance";
  const tolerance = marking.tolerance ?? { minus: 0.2, plus: 0.2 };
  const { ratedVolts, ratedVoltsKind, ratedWatts, safetyClass, dielectric, composition } = marking;
  return {
    kind,
    value,
    dimension,
    tolerance,
    toleranceWritten: marking.toleranceWritten ?? false,
    family: "printed",
    code: section === undefined ? "printed value" : "printed value of one section",
    because,
    ...(section !== undefined && { section }),
    ...(ratedVolts !== undefined && { ratedVolts }),
    ...(ratedVoltsKind && { ratedVoltsKind }),
    ...(ratedWatts !== undefined && { ratedWatts }),
    ...(safetyClass && { safetyClass }),
    ...(dielectric && { dielectric }),
    ...(composition && { composition }),
    written: writeBack(value, dimension, tolerance),
    source: familyFacts.printed.source,
    notes: marking.notes,
  };
}

/** The readings of one kind, the likeliest first, or why there are none. */
function ofKind(kind: Kind, text: string, context: DecodeContext): Result<Ranked[]> {
  const results = kind === "resistor" ? [parseMarking(text, kind, context)] : parseSections(text, kind, context);
  const found: Ranked[] = [];
  const several = results.length > 1;
  for (const [place, result] of results.entries()) {
    if (!result.ok) return result;
    const { value: marking } = result;
    if (marking.value === undefined) continue;
    const section = several ? place + 1 : undefined;
    // Sections stand together: none is likelier than the next.
    const first = several ? 9 - place / 10 : score(kind, marking.value, text);
    found.push({ reading: readingOf(kind, marking, marking.value, why(kind, marking), section), score: first });
    for (const [rank, other] of marking.alternatives.entries()) {
      const reading = readingOf(kind, marking, other.value, other.because, section);
      found.push({ reading: { ...reading, notes: [] }, score: Math.min(first, 8) - 1 - rank });
    }
  }
  return { ok: true, value: found };
}

function why(kind: Kind, marking: Marking): string {
  const unit = formatQuantity(marking.value ?? 0, kind === "resistor" ? "resistance" : "capacitance", 4);
  return `read as the marking of a ${kind}: ${unit}`;
}

/** Everything that figures, letters and units can mean, or why they mean nothing. */
export function decodePrinted(text: string, context: DecodeContext): Result<Ranked[]> {
  const kinds: readonly Kind[] = context.kind ? [context.kind] : watts.test(text) ? ["resistor"] : ["resistor", "capacitor"];
  const found: Ranked[] = [];
  const problems: { kind: Kind; problem: ReadingProblem }[] = [];
  for (const kind of kinds) {
    const result = ofKind(kind, text, context);
    if (result.ok) found.push(...result.value);
    else problems.push({ kind, problem: result.problem });
  }
  if (found.length > 0) return { ok: true, value: found };
  const telling = problems.find(({ kind }) => tellTale[kind].test(text)) ?? problems[0];
  const expected = problems.map(({ problem }) => problem.expected).join("; or ");
  const fallback: ReadingProblem = { message: "nothing is written here", offset: 0, length: text.length, expected };
  return { ok: false, problem: telling ? { ...telling.problem, expected } : fallback };
}
