import { formatQuantity } from "../quantities/formatQuantity.ts";
import { bareCapacitanceUnit } from "../quantities/parseQuantity.ts";
import { letterTolerance } from "../quantities/parseTolerance.ts";
import { isPreferred } from "../quantities/preferred/series.ts";
import type { MarkingContext, Result, Tolerance } from "../quantities/types.ts";
import { take, takeAt, unreadable, type Workpiece } from "./workpiece.ts";

/** EIA voltage codes of film capacitors, from-memory (reference section 4.7). */
export const voltageCodes: Readonly<Record<string, number>> = {
  "1H": 50,
  "2A": 100,
  "2D": 200,
  "2E": 250,
  "2G": 400,
  "2J": 630,
  "3A": 1000,
};

/** Below 10 pF the letter is an absolute tolerance in picofarad (S19; F and G from-memory). */
export const picofaradLetters: Readonly<Record<string, number>> = { B: 0.1, C: 0.25, D: 0.5, F: 1, G: 2 };

/** Three figures of the EIA code in farads: two figures and a power of ten in pF; 8 is 0.01, 9 is 0.1 (reference section 4.7). */
export function eiaFarads(figures: string): number {
  const power = Number(figures[2]);
  return Number(`${figures.slice(0, 2)}e${(power === 8 ? -2 : power === 9 ? -1 : power) - 12}`);
}

/** Tolerance of a letter at a capacitance: percent, or picofarad below 10 pF. */
export function capacitanceTolerance(letter: string, farads: number): Tolerance | undefined {
  const absolute = Object.hasOwn(picofaradLetters, letter) ? picofaradLetters[letter] : undefined;
  if (absolute !== undefined && farads > 0 && farads < 10e-12) {
    const share = Number(((absolute * 1e-12) / farads).toPrecision(6));
    return { minus: share, plus: share };
  }
  return letterTolerance(letter);
}

/** Takes a code such as 104K, 472M or 2A104J out of the piece; K stands for 10 %, not for kilo. */
export function takeCapacitanceCode(piece: Workpiece): { farads: number; tolerance: Tolerance; ratedVolts?: number } | undefined {
  const found = take(piece, /(?<![\w.])(1H|2A|2D|2E|2G|2J|3A)?\s?(\d{3})([BCDFGHJKMQTSZ])(?![A-Za-z.])/);
  if (!found) return undefined;
  const [, volts, figures = "", letter = ""] = found;
  const farads = eiaFarads(figures);
  const tolerance = capacitanceTolerance(letter, farads);
  if (!tolerance) return undefined;
  const literal = Number(`${figures}e-12`);
  if (literal !== farads) {
    piece.alternatives.push({
      reading: formatQuantity(literal, "capacitance"),
      value: literal,
      because: "older British ceramics print picofarad as they stand",
    });
  }
  const ratedVolts = volts === undefined ? undefined : voltageCodes[volts];
  return { farads, tolerance, ...(ratedVolts === undefined ? {} : { ratedVolts }) };
}

/** Takes a tolerance letter that stands right behind a value: 0.1K250, 47nK, u47J, 3n3J. */
export function takeToleranceLetter(piece: Workpiece): Tolerance | undefined {
  const found = /(?<![\w.])(\d*\.\d+|\d+(?:\.\d+)?[pnu]F?|\d*[pnu]\d+)([JKMZ])(?![A-Za-z.])/.exec(piece.text);
  if (!found) return undefined;
  takeAt(piece, found.index + (found[1] ?? "").length, 1);
  return letterTolerance(found[2] ?? "");
}

/** Up to these a number of the form 10/450 is microfarad of an electrolytic, unless a dielectric says otherwise. Source: common-practice. */
const electrolyticUpTo = { microfarads: 150, lowVolts: 100 };

/**
 * Farads of a number without unit. Three figures may be the EIA code; a whole number with volts beside it may be an electrolytic's
 * microfarad; else the trade's rule for bare numbers. What else it could be becomes an alternative.
 */
export function bareCapacitance(
  piece: Workpiece,
  figures: string,
  number: number,
  ratedVolts: number | undefined,
  context: MarkingContext,
): Result<number> {
  const decimal = /^[\d.]+$/.test(figures) ? figures : String(number);
  const picofarads = Number(`${decimal}e-12`);
  const microfarads = Number(`${decimal}e-6`);
  const other = (value: number, because: string): void => {
    piece.alternatives.push({ reading: formatQuantity(value, "capacitance"), value, because });
  };
  const electrolytic = context.electrolytic === true || context.dielectric === "electrolytic" || context.dielectric === "tantalum";
  if (/^\d{3}$/.test(figures) && !electrolytic) {
    const coded = eiaFarads(figures);
    const last = Number(figures[2]);
    const old = context.dielectric === "mica" || (context.era !== undefined && context.era < 1960);
    const codeLikely = last !== 0 && !old && isPreferred(coded, "E24");
    if (codeLikely) {
      piece.notes.push("three figures read as two figures and a power of ten, in picofarad");
      other(picofarads, "the figures could be picofarad as they stand");
      return { ok: true, value: coded };
    }
    if (!old && coded !== picofarads) other(coded, "the last figure could be a power of ten");
  }
  const settled = context.electrolytic === false || context.dielectric !== undefined;
  if (Number.isInteger(number) && number >= 1 && ratedVolts !== undefined && !settled && !electrolytic) {
    const isElectrolytic = (number <= electrolyticUpTo.microfarads && ratedVolts <= 500) || ratedVolts <= electrolyticUpTo.lowVolts;
    piece.notes.push(`no unit written: ${isElectrolytic ? "microfarad of an electrolytic" : "picofarad"}, by the size and the volts`);
    other(
      isElectrolytic ? picofarads : microfarads,
      isElectrolytic ? "a whole number without unit may be picofarad" : "an electrolytic is marked in microfarad",
    );
    return { ok: true, value: isElectrolytic ? microfarads : picofarads };
  }
  const bare = bareCapacitanceUnit(number, electrolytic ? { electrolytic } : {});
  if (!bare) return unreadable(piece, "has no unit and could be microfarad or picofarad", `${figures} uF`);
  piece.notes.push(bare.note);
  return { ok: true, value: bare.unit === "uF" ? microfarads : picofarads };
}
