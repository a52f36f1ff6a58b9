import { formatFormulaValue } from "./formatFormulaValue.ts";
import type { Formula, FormulaInput, FormulaOutput, FormulaValues, Given, TypedFormula } from "./formula.ts";
import { FormulaError } from "./formulaError.ts";
import { readArguments } from "./readArguments.ts";
import { BrokenLimit } from "./requireThat.ts";

/**
 * Makes a formula of its facts and its body: `compute` then holds every argument against its limits before the body runs,
 * and every result afterwards, so that neither NaN nor Infinity gets out.
 *
 * @param facts as in `Formula`; `compute` there is the bare body, which may call `requireThat`
 */
export function defineFormula<const I extends Readonly<Record<string, FormulaInput>>, const O extends string>(
  facts: Omit<Formula, "compute" | "inputs" | "outputs"> & {
    readonly inputs: I;
    readonly outputs: Readonly<Record<O, FormulaOutput>>;
    compute(given: Given<I>): Record<O, number>;
  },
): TypedFormula<I, O> {
  const { compute, ...rest } = facts;
  const shown = (name: string, value: number): string => {
    const dimension = facts.inputs[name]?.dimension ?? (facts.outputs as Readonly<Record<string, FormulaOutput>>)[name]?.dimension;
    return dimension === undefined ? String(value) : formatFormulaValue(value, dimension);
  };
  return {
    ...rest,
    compute(values) {
      const given = readArguments(facts, values as FormulaValues) as Given<I>;
      const results = held(facts.id, () => compute(given), shown);
      for (const [name, value] of Object.entries<number>(results)) {
        if (!Number.isFinite(value)) throw new FormulaError(facts.id, name, value, undefined, "has no finite value for these arguments");
      }
      return results;
    },
  };
}

function held<T>(formula: string, body: () => T, shown: (name: string, value: number) => string): T {
  try {
    return body();
  } catch (error) {
    if (!(error instanceof BrokenLimit)) throw error;
    throw new FormulaError(formula, error.argument, error.value, shown(error.argument, error.value), error.limit);
  }
}
