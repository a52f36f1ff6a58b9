export { allFormulas } from "./allFormulas.ts";
export { type FormulaDimension, siUnits } from "./dimensions.ts";
export { formatFormulaValue } from "./formatFormulaValue.ts";
export type { Arguments, Formula, FormulaInput, FormulaOutput, FormulaValues, TypedFormula } from "./formula.ts";
export { FormulaError } from "./formulaError.ts";
export * from "./named.ts";
export { readFormulaValue } from "./readFormulaValue.ts";
