import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { allFormulas, type Formula, type FormulaValues, readFormulaValue } from "../../packages/calc/src/formulas/index.ts";
import type { WorkedExample, WorkedExampleFile } from "../../packages/dataset/src/generated/worked-example.ts";

const folder = "datasets/worked-examples";

/** Every file of worked examples, with its name. */
export const exampleFiles: readonly { name: string; file: WorkedExampleFile }[] = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .map((name) => ({ name: basename(name, ".json"), file: JSON.parse(readFileSync(`${folder}/${name}`, "utf8")) as WorkedExampleFile }));

export const examples: readonly WorkedExample[] = exampleFiles.flatMap(({ file }) => file.examples);

/** @throws Error when there is no such formula */
export function formulaOf(example: WorkedExample): Formula {
  const formula = allFormulas.find(({ id }) => id === example.formula);
  if (!formula) throw new Error(`${example.id}: no formula "${example.formula}"`);
  return formula;
}

function read(text: string, dimension: Parameters<typeof readFormulaValue>[1], what: string): number {
  const value = readFormulaValue(text, dimension);
  if (!value.ok) throw new Error(`${what}: ${value.problem.message}`);
  return value.value;
}

/** The arguments of an example in SI base units. @throws Error for a name or a unit that the formula does not take */
export function argumentsOf(example: WorkedExample): FormulaValues {
  const { inputs } = formulaOf(example);
  const entries = Object.entries(example.inputs).map(([name, written]) => {
    const input = inputs[name];
    if (!input) throw new Error(`${example.id}: ${example.formula} takes no "${name}"`);
    const values = [written].flat().map((text) => read(text, input.dimension, `${example.id}, ${name}`));
    return [name, input.list ? values : (values[0] ?? Number.NaN)] as const;
  });
  return Object.fromEntries(entries);
}

/** A number in the example's unit, in SI base units. */
export function inBase(example: WorkedExample, number: string | number): number {
  const output = formulaOf(example).outputs[example.output];
  if (!output) throw new Error(`${example.id}: ${example.formula} gives no "${example.output}"`);
  return read(`${number} ${example.unit}`, output.dimension, `${example.id}, result`);
}
