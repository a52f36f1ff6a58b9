import { type Formula, type FormulaValues, formatFormulaValue, siUnits } from "@underchassis/calc/formulas";
import { columns } from "./describeFormula.ts";

const each = (value: number | readonly number[]): readonly number[] => (typeof value === "number" ? [value] : value);

/** A worked formula for people: what was given, the results with units, limits and source. */
export function renderWork(formula: Formula, values: FormulaValues, results: Readonly<Record<string, number>>): string {
  const given = Object.entries(formula.inputs).map(([name, input]) => {
    const value = values[name] ?? input.default ?? Number.NaN;
    const shown = each(value).map((one) => formatFormulaValue(one, input.dimension, 6));
    return [input.symbol, shown.join(", "), values[name] === undefined ? `${input.meaning} (default)` : input.meaning];
  });
  const found = Object.entries(formula.outputs).map(([name, output]) => [
    output.symbol,
    formatFormulaValue(results[name] ?? Number.NaN, output.dimension, 4),
    output.meaning,
  ]);
  return [
    formula.title,
    `  ${formula.expression}`,
    "",
    "given",
    columns(given),
    "",
    "result",
    columns(found),
    "",
    `limits: ${formula.limits}`,
    `source: ${formula.source}`,
    "",
  ].join("\n");
}

const finite = (value: number): number | "open" => (Number.isFinite(value) ? value : "open");

/** The same as data, all numbers in SI units; an infinite resistance is the text "open". */
export function workSheet(formula: Formula, values: FormulaValues, results: Readonly<Record<string, number>>): object {
  const inputs = Object.entries(formula.inputs).map(([name, { dimension, default: usual }]) => {
    const value = values[name] ?? usual ?? Number.NaN;
    return [name, { value: typeof value === "number" ? finite(value) : value.map(finite), unit: siUnits[dimension] }];
  });
  const outputs = Object.entries(formula.outputs).map(([name, { dimension }]) => [
    name,
    { value: results[name], unit: siUnits[dimension] },
  ]);
  const { id, title, expression, limits, source } = formula;
  return { formula: id, title, expression, inputs: Object.fromEntries(inputs), results: Object.fromEntries(outputs), limits, source };
}
