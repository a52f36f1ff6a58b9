import { dimensionFacts } from "./dimensionFacts.ts";
import { nearestSpelling } from "./nearestSpelling.ts";
import { prepareText } from "./prepareText.ts";
import { problem, quoted } from "./problem.ts";
import { scanLetterCode } from "./scanLetterCode.ts";
import { type ScannedNumber, scaled, scanNumber } from "./scanNumber.ts";
import type { Dimension, MarkingContext, Quantity, Result } from "./types.ts";
import { dimensions, findUnit, spellingsOf, type Unit } from "./units.ts";

/** Beyond these a number is a slip of the pen, whatever its unit. */
const largest = 1e15;
const smallest = 1e-18;

/** Absolute zero lies at 0 K; the sums of degC and degF come out a hair beside it. */
const almostZeroKelvin = 1e-9;

/** Number and unit in SI base units; decimal where the unit is a power of ten. */
export function inBaseUnits(number: ScannedNumber, unit: Unit): number {
  return scaled(number, unit.exponent) * (unit.factor ?? 1) + (unit.offset ?? 0);
}

/**
 * The unit of a bare capacitance by the trade's rule for old US drawings (reference section 1.4 d): below 1 microfarad, a
 * whole number from 1 picofarad, an electrolytic always microfarad. Null when the rule does not say.
 */
export function bareCapacitanceUnit(
  number: number,
  context: Pick<MarkingContext, "electrolytic" | "dielectric"> = {},
): { unit: "uF" | "pF"; note: string } | null {
  if (context.electrolytic || context.dielectric === "electrolytic")
    return { unit: "uF", note: "no unit written: an electrolytic is marked in microfarad" };
  if (number < 1) return { unit: "uF", note: "no unit written: a number below 1 is read as microfarad" };
  if (Number.isInteger(number)) return { unit: "pF", note: "no unit written: a whole number is read as picofarad" };
  return null;
}

/**
 * Reads a number with its unit as people write it: "0.05 mfd", "250 mmf", "4k7", "1.2 Meg", "455 kc", "3/4 A", "-55 V".
 *
 * A bare number takes the base unit (ohm, volt, ampere, watt, hertz, henry, joule, second, siemens); a bare capacitance
 * follows `bareCapacitanceUnit`; a bare temperature or length is refused. "open" is a resistance of Infinity, as an
 * ohmmeter shows it. Never throws; a text that cannot be read comes back with the place and what was expected.
 * Sizes above 1e15 or (other than 0) below 1e-18 in SI units are refused.
 */
export function parseQuantity(
  text: string,
  dimension: Dimension,
  context: Pick<MarkingContext, "electrolytic" | "dielectric"> = {},
): Result<Quantity> {
  const facts = dimensionFacts[dimension];
  const prepared = prepareText(text, facts.expected);
  if (!prepared.ok) return prepared;
  const line = prepared.value.trimEnd();
  const start = line.search(/\S/);
  const body = line.slice(start);
  if (dimension === "resistance" && /^(open|open circuit|O\.?L\.?|infinite|infinity|\u221e)$/i.test(body)) {
    return { ok: true, value: { value: Number.POSITIVE_INFINITY, dimension, asWritten: text } };
  }

  const coded = scanLetterCode(line, start, dimension);
  if (coded && start + coded.number.length === line.length)
    return checked(text, start, line.length, scaled(coded.number, coded.exponent), dimension, []);

  const number = scanNumber(line, start);
  if (!number) return noNumber(text, line, start, dimension);
  const unitAt = start + number.length;
  const written = line.slice(unitAt).trim();
  const unitOffset = written === "" ? unitAt : line.length - written.length;

  const notes: string[] = [];
  let unit: Unit | undefined;
  if (written !== "") {
    unit = findUnit(written, dimension);
    if (!unit) return noUnit(text, line.slice(start, unitAt), written, unitOffset, dimension);
    if (unit.note) notes.push(unit.note);
  } else if (dimension === "capacitance") {
    const bare = bareCapacitanceUnit(Math.abs(scaled(number, 0)), context);
    if (!bare) return problem(`${quoted(body)} has no unit and could be microfarad or picofarad`, unitAt, 0, facts.expected, `${body} uF`);
    unit = findUnit(bare.unit, dimension);
    notes.push(bare.note);
  } else if (facts.bareUnit === null) {
    return problem(`${quoted(body)} has no unit`, unitAt, 0, facts.expected, `${body} ${facts.usualUnit}`);
  } else {
    unit = { exponent: 0 };
  }
  return checked(text, start, line.length, inBaseUnits(number, unit ?? { exponent: 0 }), dimension, notes);
}

/** The limits every reading must keep. */
function checked(
  text: string,
  start: number,
  end: number,
  value: number,
  dimension: Dimension,
  notes: readonly string[],
): Result<Quantity> {
  const facts = dimensionFacts[dimension];
  const written = text.slice(start, end);
  const fail = (why: string, nearest?: string) => problem(`${quoted(written)} ${why}`, start, end - start, facts.expected, nearest);
  if (Number.isNaN(value)) return fail("is not a number");
  const size = Math.abs(value);
  if (size > largest) return fail("is too large to be meant");
  if (size !== 0 && size < smallest) return fail("is too small to be meant");
  if (!facts.signed && value < (dimension === "temperature" ? -almostZeroKelvin : 0)) {
    if (dimension === "temperature") return fail("lies below absolute zero");
    return fail(`is negative, and ${facts.name} cannot be`, written.replace(/^[-\u2010-\u2014\u2212]\s*/, ""));
  }
  return { ok: true, value: { value: value === 0 ? 0 : value, dimension, asWritten: text, ...(notes.length > 0 ? { notes } : {}) } };
}

function noNumber(text: string, line: string, start: number, dimension: Dimension): Result<Quantity> {
  const facts = dimensionFacts[dimension];
  const decimalComma = /^([+-]?\d+),(\d+)(.*)$/.exec(line.slice(start));
  if (decimalComma) {
    const nearest = `${decimalComma[1]}.${decimalComma[2]}${decimalComma[3]}`;
    return problem(
      `${quoted(text.trim())}: a comma separates thousands only, the decimal mark is a point`,
      start,
      line.length - start,
      facts.expected,
      nearest,
    );
  }
  const why = /^[+-]?\s*[.\d]/.test(line.slice(start)) ? "is not one number" : "does not begin with a number";
  return problem(`${quoted(text.trim())} ${why}`, start, line.length - start, facts.expected);
}

/** SI prefixes a dimension's usual unit goes with, for a suggestion after a wrong unit. */
const siPrefix = /^(meg|[pnumkM])/;

function noUnit(text: string, number: string, written: string, offset: number, dimension: Dimension): Result<Quantity> {
  const facts = dimensionFacts[dimension];
  const as = text.slice(offset, offset + written.length);
  const comma = /^,(\d+)(.*)$/.exec(written);
  if (comma) {
    return problem(
      `${quoted(text.trim())}: a comma separates thousands only, the decimal mark is a point`,
      offset,
      written.length,
      facts.expected,
      `${number}.${comma[1]}${comma[2]}`,
    );
  }
  if (written === "m" && dimension === "resistance") {
    return problem(`a lone small "m" could mean milliohm or Meg`, offset, written.length, facts.expected, `${number.trim()} Meg`);
  }
  const other = dimensions.find((candidate) => findUnit(written, candidate) !== undefined);
  if (other) {
    const prefix = siPrefix.exec(written)?.[0] ?? "";
    const same = prefix !== "" && dimension !== "capacitance" ? `${prefix}${spellingsOf(dimension)[0]}` : facts.usualUnit;
    const unit = findUnit(same, dimension) ? same : facts.usualUnit;
    return problem(
      `${quoted(as)} is a unit of ${other}, not of ${dimension}`,
      offset,
      written.length,
      facts.expected,
      `${number.trim()} ${unit}`,
    );
  }
  const spelling = nearestSpelling(written, spellingsOf(dimension));
  return problem(
    `${quoted(as)} is not a unit of ${dimension}`,
    offset,
    written.length,
    facts.expected,
    `${number.trim()} ${spelling ?? facts.usualUnit}`,
  );
}
