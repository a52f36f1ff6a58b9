import { parseQuantity, type Quantity, type ReadingProblem } from "@underchassis/calc";
import { InputError } from "../inputError.ts";

/** What a person can do about a text that could not be read: what it takes, and the nearest that would work. */
export function readingError(argument: string, { message, expected, nearest }: ReadingProblem): InputError {
  const help = nearest === undefined ? `it takes ${expected}` : `nearest: ${nearest}; it takes ${expected}`;
  return new InputError(argument, message, help);
}

/** A quantity given behind an option, in SI units. @throws InputError when it cannot be read or is not more than nothing */
export function readOption(option: string, text: string, dimension: Quantity["dimension"]): number {
  const read = parseQuantity(text, dimension);
  if (!read.ok) throw readingError(option, read.problem);
  const { value } = read.value;
  if (!(value > 0) || !Number.isFinite(value)) throw new InputError(option, `"${text}" is no ${dimension} of more than nothing`);
  return value;
}

const years = { first: 1900, last: 2100 };

/** A year given behind --era. @throws InputError when it is none */
export function readEra(text: string): number {
  const year = /^\d{4}$/.test(text.trim()) ? Number(text) : Number.NaN;
  if (year >= years.first && year <= years.last) return year;
  throw new InputError("--era", `"${text}" is not a year`, `it takes a year from ${years.first} to ${years.last}, such as 1952`);
}
