import { dimensionFacts } from "./dimensionFacts.ts";
import { parseQuantity } from "./parseQuantity.ts";
import { findTolerance } from "./parseTolerance.ts";
import { prepareText } from "./prepareText.ts";
import { problem, quoted } from "./problem.ts";
import { scanNumber } from "./scanNumber.ts";
import type { Dimension, Quantity, Result, Span } from "./types.ts";

const upper = /^(?:max(?:imum|\.)?|up to|at most|not more than|no more than|less than|under|below|<=|<|\u2264)\s*/i;
const lower = /^(?:min(?:imum|\.)?|at least|not less than|no less than|more than|over|above|>=|>|\u2265)\s*/i;
const upperBehind = /\s*(?:max(?:imum|\.)?|or less)$/i;
const lowerBehind = /\s*(?:min(?:imum|\.)|or more)$/i;
/** A range has one separator and perhaps a sign or two on either side; a long chain of dashes is no range. */
const mostSeparators = 6;

const plusMinus = /\u00b1|\+\s?\/?\s?-/;

/**
 * Reads a range as published papers give it: "270 to 300 V", "270-300 V", "285 V +-10 %", "285 V +-15 V", "max 0.5 V", "> 2 Mohm".
 * Both ends are in SI base units, low before high. A single value is a span of no width. An open end is Infinity; the open lower
 * end of a quantity that cannot be negative is 0, of one that can be negative -Infinity.
 */
export function parseSpan(text: string, dimension: Dimension): Result<Span> {
  const expected = `${dimensionFacts[dimension].expected}, or a range such as "270 to 300 V" or "285 V +-10 %"`;
  const prepared = prepareText(text, expected);
  if (!prepared.ok) return prepared;
  const body = prepared.value.trim();
  const shift = prepared.value.indexOf(body);
  const span = (low: number, high: number): Result<Span> => ({
    ok: true,
    value: { low: Math.min(low, high), high: Math.max(low, high), dimension, asWritten: text },
  });
  const read = (part: string, offset: number): Result<Quantity> => {
    const result = parseQuantity(part, dimension);
    if (result.ok) return result;
    return { ok: false, problem: { ...result.problem, offset: result.problem.offset + offset + shift, expected } };
  };

  const single = parseQuantity(body, dimension);
  if (single.ok) return span(single.value.value, single.value.value);

  const open = dimensionFacts[dimension].signed ? Number.NEGATIVE_INFINITY : 0;
  for (const [pattern, isUpper] of [
    [upper, true],
    [lower, false],
    [upperBehind, true],
    [lowerBehind, false],
  ] as const) {
    const found = pattern.exec(body);
    if (!found) continue;
    const rest = found.index === 0 ? body.slice(found[0].length) : body.slice(0, found.index);
    const limit = read(rest, found.index === 0 ? found[0].length : 0);
    if (!limit.ok) return limit;
    return isUpper ? span(open, limit.value.value) : span(limit.value.value, Number.POSITIVE_INFINITY);
  }

  const percent = findTolerance(body);
  if (percent && percent.offset > 0 && percent.offset + percent.length === body.length) {
    const middle = read(body.slice(0, percent.offset), 0);
    if (!middle.ok) return middle;
    if (body.slice(percent.offset).includes("%") || /percent|pct/.test(body)) {
      const { value } = middle.value;
      return span(value - Math.abs(value) * percent.tolerance.minus, value + Math.abs(value) * percent.tolerance.plus);
    }
  }
  const absolute = plusMinus.exec(body);
  if (absolute && absolute.index > 0) {
    const [middle, width] = pair(body, absolute.index, absolute[0].length, read);
    if (!middle.ok) return middle;
    if (!width.ok) return width;
    return span(middle.value.value - Math.abs(width.value.value), middle.value.value + Math.abs(width.value.value));
  }

  for (const separator of separators(body).slice(0, mostSeparators)) {
    const [low, high] = pair(body, separator.offset, separator.length, read);
    if (low.ok && high.ok) return span(low.value.value, high.value.value);
  }
  const why = single.problem;
  return problem(
    `${quoted(text.trim())} is neither ${dimensionFacts[dimension].name} nor a range: ${why.message}`,
    why.offset + shift,
    why.length,
    expected,
    why.nearest,
  );
}

/** The two quantities on either side of a separator; one without a unit takes the other's. */
function pair(
  body: string,
  offset: number,
  length: number,
  read: (part: string, offset: number) => Result<Quantity>,
): [Result<Quantity>, Result<Quantity>] {
  const left = body.slice(0, offset).trim();
  const right = body.slice(offset + length);
  const rightBody = right.trim();
  const rightOffset = offset + length + right.indexOf(rightBody);
  const unitOf = (part: string): string => part.slice(scanNumber(part, 0)?.length ?? part.length).trim();
  const leftUnit = unitOf(left);
  const rightUnit = unitOf(rightBody);
  return [
    read(leftUnit === "" && left !== "" ? `${left} ${rightUnit}` : left, 0),
    read(rightUnit === "" && rightBody !== "" ? `${rightBody} ${leftUnit}` : rightBody, rightOffset),
  ];
}

/** Places where one number may end and the next begin; a dash at the very front is a sign. */
function separators(body: string): { offset: number; length: number }[] {
  const found: { offset: number; length: number }[] = [];
  for (const match of body.matchAll(/\s+to\s+|\s*\.\.\.?\s*|\s*\u2026\s*|\s+and\s+|\s*-\s*/g)) {
    if (match.index > 0) found.push({ offset: match.index, length: match[0].length });
  }
  return found;
}
