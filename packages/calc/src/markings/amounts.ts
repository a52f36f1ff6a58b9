import { nearestSpelling } from "../quantities/nearestSpelling.ts";
import { inBaseUnits } from "../quantities/parseQuantity.ts";
import { problem, quoted } from "../quantities/problem.ts";
import { scanLetterCode } from "../quantities/scanLetterCode.ts";
import { type NumberOptions, type ScannedNumber, scaled, scanNumber } from "../quantities/scanNumber.ts";
import type { Dimension, Result } from "../quantities/types.ts";
import { findUnit, spellingsOf, type Unit } from "../quantities/units.ts";
import { markingExpected, type Workpiece } from "./workpiece.ts";

/** A number in a marking, with the unit behind it if there is one. */
export interface Amount {
  /** In SI base units; as written when there is no unit. */
  value: number;
  dimension: Dimension | null;
  unit: Unit | null;
  unitText: string;
  offset: number;
  length: number;
}

export interface AmountOptions extends NumberOptions {
  /** Units tried, most likely first. */
  dimensions: readonly Dimension[];
}

const gap = /[\s|,;:()/@&\-_.=]+|at\b/iy;
const word = /[A-Za-z#][A-Za-z0-9#-]*/y;
const unitWord = /\s*([A-Za-z\u03a9\u00b0~=\u2127.]+(?:\/[sSvV](?![A-Za-z]))?)/y;
/** A sign, standing apart from what is before it and right before a figure. */
const minusBefore = /(?:^|\s)[-\u2212\u2013]$/;
const size = { least: 1e-18, most: 1e15 };

/** The longest run of up to three words behind `offset` that is a unit of one of the dimensions. */
function unitBehind(
  text: string,
  offset: number,
  dimensions: readonly Dimension[],
): { unit: Unit; dimension: Dimension; length: number; text: string } | null {
  const ends: number[] = [];
  let end = offset;
  for (let count = 0; count < 3; count += 1) {
    unitWord.lastIndex = end;
    const found = unitWord.exec(text);
    if (!found) break;
    end += found[0].length;
    ends.push(end);
  }
  for (const stop of ends.reverse()) {
    if (/[A-Za-z0-9]/.test(text[stop] ?? "")) continue;
    const written = text.slice(offset, stop);
    for (const dimension of dimensions) {
      const unit = findUnit(written, dimension);
      if (unit) return { unit, dimension, length: stop - offset, text: written.trim() };
    }
  }
  return null;
}

function codedAmount(
  text: string,
  offset: number,
  dimensions: readonly Dimension[],
): { number: ScannedNumber; exponent: number; dimension: Dimension } | null {
  for (const dimension of dimensions) {
    const coded = scanLetterCode(text, offset, dimension);
    if (coded) return { ...coded, dimension };
  }
  return null;
}

/**
 * All numbers with their units that remain in a piece, in the order written. Words that belong to no number are noted on the piece
 * as not read; a number followed by a word that is no unit is a problem, and so is one with a minus of its own ("10k -1 W": what a part
 * is marked with is never negative).
 */
export function amounts(piece: Workpiece, options: AmountOptions): Result<Amount[]> {
  const { text } = piece;
  const expected = markingExpected[piece.kind];
  const found: Amount[] = [];
  const unread: string[] = [];
  let offset = 0;
  while (offset < text.length) {
    gap.lastIndex = offset;
    const between = gap.exec(text);
    if (between && !/^\.\d/.test(text.slice(gap.lastIndex - 1))) {
      offset += between[0].length;
      continue;
    }
    if (between && between[0].length > 1) {
      offset += between[0].length - 1;
      continue;
    }
    const sign = minusBefore.exec(piece.asWritten.slice(0, offset));
    if (sign && /^\.?\d/.test(text.slice(offset))) {
      const stretch = /^[\d.]+(?:\s*[A-Za-z\u03a9]+)?/.exec(text.slice(offset))?.[0] ?? "";
      const nearest = `${piece.asWritten.slice(0, offset - 1)}${piece.asWritten.slice(offset)}`.trim();
      return problem(`${quoted(`-${stretch}`)} is negative`, offset - 1, stretch.length + 1, expected, nearest);
    }
    const coded = codedAmount(text, offset, options.dimensions);
    if (coded) {
      const { number, exponent, dimension } = coded;
      found.push({ value: scaled(number, exponent), dimension, unit: null, unitText: "", offset, length: number.length });
      offset += number.length;
      continue;
    }
    const number = scanNumber(text, offset, options);
    if (number) {
      const behind = offset + number.length;
      const unit = unitBehind(text, behind, options.dimensions);
      const length = number.length + (unit?.length ?? 0);
      const value = unit ? inBaseUnits(number, unit.unit) : scaled(number, 0);
      if (!unit) {
        const stranger = /^\s*([A-Za-z\u03a9%][^\s|,;()]*)/.exec(text.slice(behind));
        if (stranger) {
          const written = stranger[1] ?? "";
          const spelling = nearestSpelling(
            written,
            options.dimensions.flatMap((dimension) => spellingsOf(dimension)),
          );
          const nearest = spelling && `${text.slice(offset, behind)} ${spelling}`;
          return problem(
            `${quoted(written)} behind ${quoted(text.slice(offset, behind))} is not a unit here`,
            behind + stranger[0].length - written.length,
            written.length,
            expected,
            nearest,
          );
        }
      }
      if (value !== 0 && (Math.abs(value) > size.most || Math.abs(value) < size.least)) {
        return problem(`${quoted(text.slice(offset, offset + length))} is not a size to be meant`, offset, length, expected);
      }
      if (unit?.unit.note && !piece.notes.includes(unit.unit.note)) piece.notes.push(unit.unit.note);
      found.push({ value, dimension: unit?.dimension ?? null, unit: unit?.unit ?? null, unitText: unit?.text ?? "", offset, length });
      offset += length;
      continue;
    }
    word.lastIndex = offset;
    const name = word.exec(text);
    if (!name) return problem(`${quoted(text.slice(offset, offset + 1))} cannot be read here`, offset, 1, expected);
    unread.push(name[0]);
    offset += name[0].length;
  }
  if (unread.length > 0) piece.notes.push(`not read: ${unread.join(" ")}`);
  return { ok: true, value: found };
}

/** One amount a dimension at most; bare numbers apart. Two of a dimension are a problem. */
function sorted(piece: Workpiece, list: readonly Amount[]): Result<{ by: Partial<Record<Dimension, Amount>>; bare: Amount[] }> {
  const by: Partial<Record<Dimension, Amount>> = {};
  const bare: Amount[] = [];
  for (const amount of list) {
    if (amount.dimension === null) {
      bare.push(amount);
    } else if (by[amount.dimension]) {
      const written = piece.asWritten.slice(amount.offset, amount.offset + amount.length);
      return problem(`${quoted(written)} is a second ${amount.dimension}`, amount.offset, amount.length, markingExpected[piece.kind]);
    } else {
      by[amount.dimension] = amount;
    }
  }
  return { ok: true, value: { by, bare } };
}

/** Amounts of a piece, one a dimension: `amounts` and `sorted` in one step. `bareAllowed` bare numbers may remain. */
export function readAmounts(
  piece: Workpiece,
  options: AmountOptions,
  bareAllowed = 0,
): Result<{ by: Partial<Record<Dimension, Amount>>; bare: Amount[] }> {
  const list = amounts(piece, options);
  if (!list.ok) return list;
  const result = sorted(piece, list.value);
  if (!result.ok) return result;
  const extra = result.value.bare[bareAllowed];
  if (extra) {
    const written = piece.asWritten.slice(extra.offset, extra.offset + extra.length);
    return problem(`${quoted(written)} has no unit`, extra.offset, extra.length, markingExpected[piece.kind]);
  }
  return result;
}
