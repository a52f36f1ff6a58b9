import { parseQuantity, type Result } from "../quantities/index.ts";
import { derivedUnits, type FormulaDimension, isDerived } from "./dimensions.ts";

const numberThenUnit = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*?)\s*$/;

/**
 * Reads a number with its unit for an argument of a formula: `parseQuantity` for the dimensions of parts and readings, the
 * units of `derivedUnits` for the others. A bare level is decibels; every other derived dimension wants its unit.
 *
 * @returns the value in SI base units, or what is wrong with the text; never throws
 */
export function readFormulaValue(text: string, dimension: FormulaDimension): Result<number> {
  if (!isDerived(dimension)) {
    const read = parseQuantity(text, dimension);
    return read.ok ? { ok: true, value: read.value.value } : read;
  }
  const units = derivedUnits[dimension];
  const expected = `a number with one of ${units.map(([spelling]) => spelling).join(", ")}`;
  const [, number = "", unit = ""] = numberThenUnit.exec(text) ?? [];
  const fail = (message: string): Result<number> => ({ ok: false, problem: { message, offset: 0, length: text.length, expected } });
  if (number === "") return fail(`${JSON.stringify(text)} does not begin with a number`);
  const size = unit === "" && dimension === "level" ? 1 : units.find(([spelling]) => spelling.toLowerCase() === unit.toLowerCase())?.[1];
  if (size === undefined)
    return fail(unit === "" ? `${JSON.stringify(text)} has no unit` : `${JSON.stringify(unit)} is not a unit of ${dimension}`);
  return { ok: true, value: Number(number) * size };
}
