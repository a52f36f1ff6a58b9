import { formatQuantity } from "../quantities/formatQuantity.ts";
import { letterTolerance, percentTolerance } from "../quantities/parseTolerance.ts";
import { isPreferred } from "../quantities/preferred/series.ts";
import { scanLetterCode } from "../quantities/scanLetterCode.ts";
import { scaled } from "../quantities/scanNumber.ts";
import type { Marking, MarkingContext, Result, Tolerance } from "../quantities/types.ts";
import { readAmounts } from "./amounts.ts";
import { bodyEndDotText } from "./bodyEndDotText.ts";
import { decodeBands } from "./decodeBands.ts";
import { decodeBodyEndDot } from "./decodeBodyEndDot.ts";
import { defaultResistorTolerance } from "./defaultTolerance.ts";
import { leadingColours } from "./leadingColours.ts";
import { takeTolerance } from "./takeTolerance.ts";
import { marking, take, takeAt, takeWord, unreadable, type Workpiece } from "./workpiece.ts";

type Composition = NonNullable<Marking["composition"]>;

export const compositions: readonly (readonly [RegExp, Composition])[] = [
  [/\bwire[- ]?wound\b|\bWW\b|\bvitreous\b/i, "wirewound"],
  [/\bmetal[- ]oxide\b|\bMOX\b/i, "metal-oxide"],
  [/\bmetal[- ]film\b/i, "metal-film"],
  [/\bcarbon[- ]film\b/i, "carbon-film"],
  [/\bcarbon[- ]comp(?:osition|\.)?(?![A-Za-z])|\bcomposition\b|\bcarbon\b/i, "carbon-composition"],
];

/** Until about then a lone M could mean thousand; a value above 20 M shows that it does (reference section 1.4, S58). */
const romanThousandUntil = 1950;
const romanThousandAbove = 20e6;

/** A coded value with its tolerance letter: 4K7J, 473J, 4702F. K and M behind figures are units: 470K is 470 kohm. */
function codeWithLetter(piece: Workpiece): Result<{ ohms: number; tolerance: Tolerance }> | null {
  const start = piece.text.search(/[^\s|]/);
  const coded = scanLetterCode(piece.text, start, "resistance", true);
  if (coded) {
    const letter = piece.text[start + coded.number.length] ?? "";
    const tolerance = letterTolerance(letter);
    if (!tolerance) return null;
    const value = piece.asWritten.slice(start, start + coded.number.length);
    // Codes are printed in capitals throughout: behind a small k a capital M is as likely a second unit as a tolerance.
    if (/[a-z]/.test(value) && /[KMG]/.test(letter)) {
      const share = Number((tolerance.plus * 100).toPrecision(4));
      return unreadable(piece, `has two letters that may be units: ${letter} may mean ${share} % or be one too many`, `${value} ${share}%`);
    }
    takeAt(piece, start, coded.number.length + 1);
    return { ok: true, value: { ohms: scaled(coded.number, coded.exponent), tolerance } };
  }
  const found = take(piece, /(?<![\w.])(?:(\d{2})(\d)([BCDFGHJ])|(\d{3})(\d)([BCDFGHJ]))(?![\w.])/);
  if (!found) return null;
  const tolerance = letterTolerance(found[3] ?? found[6] ?? "");
  return tolerance ? { ok: true, value: { ohms: Number(`${found[1] ?? found[4]}e${found[2] ?? found[5]}`), tolerance } } : null;
}

/** A bare number of three or four figures may be a value in ohms or figures and a power of ten. */
function bareOhms(piece: Workpiece, written: string, ohms: number): number {
  if (!/^\d{3,4}$/.test(written)) return ohms;
  const exponent = Number(written.at(-1));
  const coded = Number(`${written.slice(0, -1)}e${exponent}`);
  if (exponent === 0 || exponent > 7) return ohms;
  const literalLikely = isPreferred(ohms, "E24") || isPreferred(ohms, "E96") || !isPreferred(coded, "E24");
  const [first, second] = literalLikely ? [ohms, coded] : [coded, ohms];
  piece.notes.push(literalLikely ? "bare number read as ohms" : "bare number read as figures and a power of ten");
  piece.alternatives.push({
    reading: formatQuantity(second, "resistance"),
    value: second,
    because: literalLikely ? "the last figure could be a power of ten" : "the figures could be ohms as they stand",
  });
  return first;
}

function romanThousand(piece: Workpiece, ohms: number, unitText: string, era: number | undefined): number {
  if (unitText !== "M" || (era !== undefined && era >= romanThousandUntil)) return ohms;
  const thousands = Number((ohms / 1000).toPrecision(12));
  if (ohms > romanThousandAbove) {
    piece.notes.push("M read as thousand, as on some early drawings: above 20 million ohm it can hardly mean Meg");
    piece.alternatives.push({ reading: formatQuantity(ohms, "resistance"), value: ohms, because: "M means Meg today" });
    return thousands;
  }
  if (era !== undefined)
    piece.alternatives.push({
      reading: formatQuantity(thousands, "resistance"),
      value: thousands,
      because: "M means thousand on some drawings of that time",
    });
  return ohms;
}

/** Reads a resistor: bands by name, a printed value, a code, with watts, tolerance and make. `value` in ohms. */
export function resistorMarking(piece: Workpiece, context: MarkingContext): Result<Marking> {
  const written = takeWord(piece, compositions);
  const composition = written ?? context.composition;
  let tolerance: Tolerance | undefined;
  let ohms: number | undefined;

  const places = bodyEndDotText(piece);
  const bands = places ? [] : leadingColours(piece);
  if (places) {
    const reading = decodeBodyEndDot(places);
    if (!reading.ok) return unreadable(piece, `cannot be read body-end-dot: ${reading.problem.message}`);
    ohms = reading.value.value;
    tolerance = reading.value.tolerance;
    piece.notes.push(reading.value.because, ...reading.value.notes);
  }
  if (bands.length > 0) {
    const readings = decodeBands(bands, { ...context, ...(composition ? { composition } : {}) });
    if (!readings.ok) return readings;
    const [first, ...others] = readings.value;
    if (!first) return unreadable(piece, "fits no resistor code");
    ohms = first.value;
    if (first.toleranceWritten || first.value === 0) tolerance = first.tolerance;
    piece.notes.push(first.because, ...first.notes);
    for (const other of others) {
      const share = `+-${Number((other.tolerance.plus * 100).toPrecision(4))} %`;
      piece.alternatives.push({
        reading: `${formatQuantity(other.value, "resistance")} ${share}`,
        value: other.value,
        because: other.because,
      });
    }
  }

  const percent = takeTolerance(piece);
  if (!percent.ok) return percent;
  tolerance = percent.value ?? tolerance;
  if (ohms === undefined) {
    const coded = codeWithLetter(piece);
    if (coded && !coded.ok) return coded;
    if (coded) {
      ohms = coded.value.ohms;
      tolerance = coded.value.tolerance;
    }
  }
  const list = readAmounts(piece, { dimensions: ["resistance", "power", "voltage"], mixedFractions: false }, ohms === undefined ? 1 : 0);
  if (!list.ok) return list;
  const { by, bare } = list.value;
  if (by.resistance) {
    if (ohms !== undefined || bare.length > 0) return unreadable(piece, "gives more than one resistance");
    ohms = romanThousand(piece, by.resistance.value, by.resistance.unitText, context.era);
  } else if (bare[0]) {
    ohms = bareOhms(piece, piece.text.slice(bare[0].offset, bare[0].offset + bare[0].length), bare[0].value);
  }
  if (ohms === undefined) return unreadable(piece, "gives no resistance");
  if (by.power?.value === 0 || by.voltage?.value === 0) return unreadable(piece, "gives a rating of nothing");
  if (tolerance === undefined && bands.length < 3 && context.era === undefined)
    piece.notes.push("tolerance not written, taken as 20 % of an early part");
  return marking(piece, {
    value: ohms,
    dimension: "resistance",
    tolerance: tolerance ?? (bands.length > 0 ? percentTolerance(20) : defaultResistorTolerance(context.era)),
    toleranceWritten: tolerance !== undefined,
    ...(by.power ? { ratedWatts: by.power.value } : {}),
    ...(by.voltage ? { ratedVolts: by.voltage.value } : {}),
    ...(composition ? { composition } : {}),
  });
}
