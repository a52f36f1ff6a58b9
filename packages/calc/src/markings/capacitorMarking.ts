import { formatQuantity } from "../quantities/formatQuantity.ts";
import { percentTolerance } from "../quantities/parseTolerance.ts";
import type { Dielectric, Marking, MarkingContext, Result, Tolerance } from "../quantities/types.ts";
import { type Amount, amounts } from "./amounts.ts";
import { bareCapacitance, takeCapacitanceCode, takeToleranceLetter } from "./capacitanceCode.ts";
import { colouredCapacitor } from "./colouredCapacitor.ts";
import { defaultCapacitorTolerance } from "./defaultTolerance.ts";
import { leadingColours } from "./leadingColours.ts";
import { likelyDielectric } from "./likelyDielectric.ts";
import { takeTolerance } from "./takeTolerance.ts";
import { marking, take, takeAt, takeWord, unreadable, type Workpiece } from "./workpiece.ts";

export const dielectrics: readonly (readonly [RegExp, Dielectric])[] = [
  [/\bpaper[- ](?:in[- ])?oil\b|\boil[- ](?:filled|impregnated|paper)\b|\boil\b|\bPIO\b/i, "oil"],
  [/\bsilver(?:ed)?[- ]mica\b|\bmica\b/i, "mica"],
  [/\bceramic\b|\bdis[ck](?:[- ]ceramic)?\b|\bcer\b/i, "ceramic"],
  [/\btant(?:alum)?\b/i, "tantalum"],
  [/\bpolypropylene\b|\bpolyester\b|\bpolystyrene\b|\bmetalli[sz]ed film\b|\bfilm\b/i, "film"],
  [/\belectrolytic\b|\belec(?:t|tro)?\b\.?|\blytic\b/i, "electrolytic"],
  [/\bwax(?:ed)?[- ]paper\b|\bpaper\b/i, "paper"],
  [/\bair[- ](?:variable|trimmer|spaced)\b|\bair\b/i, "air"],
];

/** EIA-198 temperature characteristics (S19) and the trade's N and P figures: only ceramics carry them. */
const ceramicCharacteristic = /\b(NP[0O]|C0G|[NP]\d{3,4}|[XYZ][2-8][A-FPRSTUV])\b/;
const safety = /\b(X[1-3]|Y[1-4])(?:\s*[/+]?\s*(X[1-3]|Y[1-4]))?(?![A-Za-z0-9])/i;
const bodyTemperature = /(?<![\d.])(?:65|70|85|105|125)\s*(?:\u00b0\s*|deg\s*)C\b|(?<![\d.])(?:65|70|85|105|125)C\b/i;
const surgeBehind = /(?<![\d.])(\d+)\s*V?\s*(?:DC\s*)?(?:surge|peak|pk|max)\b/i;
const surgeBefore = /\b(?:surge|peak)\s*:?\s*(\d+)\s*(?:V(?:DC)?\b)?/i;

/** "20-20", "8-8-8": values of several sections, not a range. */
const severalValues = /^[\s|]*((?:\d+\.?\d*|\.\d+))\s*(?:[uU]F|mfd)?\s*[-+x]\s*(?:\d|\.\d)/;

/** Letters of tolerance behind a value, nano and 105 degC came in about then. Source: common-practice. */
const modernYear = 1970;

/** "3-30 pF": the travel of a trimmer, padder or variable capacitor. */
const travel = /(?<![\d.])(\d+(?:\.\d+)?)\s*(?:pF|mmf|mmfd|uuf)?\s*(?:-|to)\s*(\d+(?:\.\d+)?)\s*(?:pF|mmfd?|uufd?)(?![A-Za-z])\.?/i;

/** No capacitor of the trade is rated below: the smallest electrolytics stand 2.5 or 3 V. Source: common-practice. */
const leastRatedVolts = 1;

type SafetyClass = NonNullable<Marking["safetyClass"]>;

function takeSafetyClass(piece: Workpiece): SafetyClass | undefined {
  const found = take(piece, safety);
  if (!found) return undefined;
  const classes = [found[1], found[2]].filter((name) => name !== undefined).map((name) => name.toUpperCase() as SafetyClass);
  if (classes.length > 1) piece.notes.push(`marked for classes ${classes.join(" and ")}`);
  // The Y class is the one a life hangs on.
  return classes.find((name) => name.startsWith("Y")) ?? classes[0];
}

/** No part of the trade's equipment, nor what is fitted in its place, holds more: a prefix is missing. common-practice. */
const MOST_FARADS = 1;

/** Takes the travel of an adjustable capacitor; its largest value in farads. */
function travelOf(piece: Workpiece): number | undefined {
  const found = travel.exec(piece.text);
  if (!found || !(Number(found[1]) < Number(found[2]))) return undefined;
  takeAt(piece, found.index, found[0].length);
  take(piece, /\b(?:trimmer|padder|variable|adjustable)\b/i);
  piece.notes.push(`adjustable from ${found[1]} pF to ${found[2]} pF: the value is the largest`);
  return Number(`${found[2]}e-12`);
}

interface Volts {
  rated?: Amount;
  surge?: number;
}

/** Rated volts, and surge volts when two are written with the higher second. */
function voltsOf(piece: Workpiece, list: readonly Amount[], surge: number | undefined): Result<Volts> {
  const [rated, second, third] = list;
  if (third || (second && surge !== undefined)) return unreadable(piece, "gives more voltages than rated and surge");
  if (rated && second) {
    const ratio = second.value / rated.value;
    if (!(ratio >= 1 && ratio <= 1.5)) return unreadable(piece, "gives two voltages that are not a rated and a surge voltage");
    piece.notes.push("second voltage read as the surge voltage");
    return { ok: true, value: { rated, surge: second.value } };
  }
  return { ok: true, value: { ...(rated ? { rated } : {}), ...(surge === undefined ? {} : { surge }) } };
}

/**
 * Reads a capacitor of one section: ".05/600", "40 mfd 450V", "250 mmf mica", "104K", "472M 1kV", "0.1 uF 275 VAC X2".
 * `value` in farads. Voltages are DC unless marked AC or the part is of a mains class.
 */
export function capacitorMarking(piece: Workpiece, context: MarkingContext): Result<Marking> {
  const characteristic = take(piece, ceramicCharacteristic)?.[1];
  if (characteristic) piece.notes.push(`temperature characteristic ${characteristic}`);
  const safetyClass = takeSafetyClass(piece);
  const written = takeWord(piece, dielectrics) ?? (characteristic ? "ceramic" : undefined);
  const told = written ?? context.dielectric ?? (context.electrolytic ? "electrolytic" : undefined);
  const colours = leadingColours(piece);
  if (colours.length > 0) return colouredCapacitor(piece, colours, told, written !== undefined);
  const temperature = take(piece, bodyTemperature);
  if (temperature) piece.notes.push(`body temperature limit ${temperature[0]}`);

  let tolerance: Tolerance | undefined;
  const percent = takeTolerance(piece);
  if (!percent.ok) return percent;
  if (percent.value) {
    tolerance = percent.value;
  } else if (take(piece, /\bGMV\b/i)) {
    tolerance = percentTolerance(0, 100);
  }
  const adjustable = travelOf(piece);
  const first = severalValues.exec(piece.text)?.[1];
  if (first) return unreadable(piece, "gives the values of several sections", `one section, such as "${first} uF"`);
  const surgeText = take(piece, surgeBehind) ?? take(piece, surgeBefore);
  const code = takeCapacitanceCode(piece);
  const lettered = code || tolerance ? undefined : takeToleranceLetter(piece);
  tolerance ??= code?.tolerance ?? lettered;
  const codeVolts = code?.ratedVolts;

  // "1/4 mfd" is a fraction, "10/16" is 10 microfarad 16 volts.
  const fractions = /^\s*1\/(?:2|4|8|10)\s*(?:u|mf)/i.test(piece.text);
  const list = amounts(piece, { dimensions: ["capacitance", "voltage"], mixedFractions: false, fractions });
  if (!list.ok) return list;
  const capacitances = list.value.filter((amount) => amount.dimension === "capacitance");
  const bare = list.value.filter((amount) => amount.dimension === null);
  if (capacitances.length > 1 || (capacitances.length === 1 && (code || adjustable !== undefined)))
    return unreadable(piece, "gives more than one capacitance: read its sections apart");
  let farads = capacitances[0]?.value ?? code?.farads ?? adjustable;
  const bareValue = farads === undefined ? bare.shift() : undefined;
  const voltages = [...list.value.filter((amount) => amount.dimension === "voltage"), ...bare].sort(
    (one, other) => one.offset - other.offset,
  );
  const volts = voltsOf(piece, voltages, surgeText ? Number(surgeText[1]) : undefined);
  if (!volts.ok) return volts;
  const { rated, surge } = volts.value;
  const ratedVolts = rated?.value ?? codeVolts;
  if (rated && rated.dimension === null) piece.notes.push(`${rated.value} read as volts`);
  if (bareValue) {
    const figures = piece.text.slice(bareValue.offset, bareValue.offset + bareValue.length);
    const reading = bareCapacitance(piece, figures, bareValue.value, ratedVolts, { ...context, ...(told ? { dielectric: told } : {}) });
    if (!reading.ok) return reading;
    farads = reading.value;
  }
  if (farads === undefined) return unreadable(piece, "gives no capacitance");
  if (farads === 0 || ratedVolts === 0) return unreadable(piece, `gives ${farads === 0 ? "a capacitance" : "a voltage"} of nothing`);
  if (ratedVolts !== undefined && ratedVolts < leastRatedVolts) {
    const volts = rated?.unitText && piece.asWritten.replace(/\bm(?=V)|(?<=\d\s*)(?:m|milli)(?=V)/i, "");
    return unreadable(piece, `gives a rating of ${formatQuantity(ratedVolts, "voltage")}, less than any capacitor`, volts || undefined);
  }
  if (farads > MOST_FARADS)
    return unreadable(piece, `would be ${formatQuantity(farads, "capacitance")}, more than any part in tube equipment`);

  const alternating = rated?.unit?.volts === "ac" || (rated?.unit?.volts === undefined && safetyClass !== undefined);
  // No paper carries a code or a letter, and no early part a nano or 105 degC: such a mark sets the age.
  const [amount] = capacitances;
  const nano = amount !== undefined && (amount.unit === null || /^n/i.test(amount.unitText));
  const modern = lettered !== undefined || nano || temperature?.[0].startsWith("105");
  const era = modern ? Math.max(context.era ?? modernYear, modernYear) : context.era;
  const likely = told ?? (code ? undefined : likelyDielectric(farads, ratedVolts, alternating, safetyClass, era));
  if (!told && likely) piece.notes.push(`taken as ${likely}: its size and age`);
  return marking(piece, {
    value: farads,
    dimension: "capacitance",
    tolerance: tolerance ?? defaultCapacitorTolerance(likely, era, ratedVolts),
    toleranceWritten: tolerance !== undefined,
    ...(ratedVolts === undefined ? {} : { ratedVolts, ratedVoltsKind: alternating ? ("ac" as const) : ("dc" as const) }),
    ...(surge === undefined ? {} : { surgeVolts: surge }),
    ...(safetyClass ? { safetyClass } : {}),
    ...(likely ? { dielectric: likely, dielectricWritten: written !== undefined } : {}),
  });
}
