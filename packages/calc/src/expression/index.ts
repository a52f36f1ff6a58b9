export { type Compared, type Evaluated, evaluateFormula, type FormulaValues } from "./evaluateFormula.ts";
export { type Comparator, type Expression, type Formula, FormulaError, type NumberExpression, type PointQuantity } from "./formula.ts";
export { parseFormula } from "./parseFormula.ts";
export { unitOf } from "./unitOf.ts";
