import { formatQuantity } from "../quantities/index.ts";
import { derivedUnits, type FormulaDimension, isDerived } from "./dimensions.ts";

/** A value in SI base units with the unit to print it in, to `digits` significant digits. */
export function formatFormulaValue(value: number, dimension: FormulaDimension, digits = 4): string {
  if (!isDerived(dimension)) return formatQuantity(value, dimension, digits);
  const [spelling, size] = derivedUnits[dimension][0] ?? ["", 1];
  return `${Number((value / size).toPrecision(digits))} ${spelling}`;
}
