import { formatFormulaValue } from "./formatFormulaValue.ts";
import type { Formula, FormulaInput, FormulaValues } from "./formula.ts";
import { FormulaError } from "./formulaError.ts";

/** The limit that a value breaks, in words; undefined when it breaks none. */
function brokenLimit(value: number, input: FormulaInput): string | undefined {
  const show = (bound: number): string => formatFormulaValue(bound, input.dimension);
  if (Number.isNaN(value)) return "must be a number";
  if (value === Number.POSITIVE_INFINITY && input.open) return undefined;
  if (!Number.isFinite(value)) return "must be finite";
  if (input.above !== undefined && value <= input.above) return `must be above ${show(input.above)}`;
  if (input.minimum !== undefined && value < input.minimum) return `must be at least ${show(input.minimum)}`;
  if (input.below !== undefined && value >= input.below) return `must be below ${show(input.below)}`;
  if (input.maximum !== undefined && value > input.maximum) return `must be at most ${show(input.maximum)}`;
  if (input.whole && !Number.isInteger(value)) return "must be a whole number";
  return undefined;
}

/**
 * Every argument of a formula by name, defaults filled in, each held against its limits.
 *
 * @throws FormulaError naming the argument, its value and the limit
 */
export function readArguments(formula: Pick<Formula, "id" | "inputs">, values: FormulaValues): Record<string, number | readonly number[]> {
  for (const name of Object.keys(values)) {
    if (!Object.hasOwn(formula.inputs, name))
      throw new FormulaError(formula.id, name, undefined, undefined, "is not an argument of this formula");
  }
  const entries = Object.entries(formula.inputs).map(([name, input]) => {
    const value = values[name] ?? input.default;
    if (value === undefined) throw new FormulaError(formula.id, name, undefined, undefined, "must be given");
    const list = typeof value === "number" ? [value] : value;
    if (list.length === 0 || (list.length > 1 && !input.list))
      throw new FormulaError(formula.id, name, undefined, undefined, input.list ? "must hold at least one value" : "takes one value");
    for (const each of list) {
      const limit = brokenLimit(each, input);
      if (limit) throw new FormulaError(formula.id, name, each, formatFormulaValue(each, input.dimension), limit);
    }
    return [name, input.list ? list : (list[0] ?? Number.NaN)] as const;
  });
  return Object.fromEntries(entries);
}
