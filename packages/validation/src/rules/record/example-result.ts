import { allFormulas, type Formula, FormulaError, readFormulaValue } from "@underchassis/calc/formulas";
import type { WorkedExample, WorkedExampleFile } from "@underchassis/dataset";
import { asWritten, type Path } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";

/** A hair for numbers that lie exactly half a unit away. */
const HAIR = 1 + 1e-6;

/** A worked example comes out. */
export const exampleResult: RecordRule = {
  code: "UC-431",
  name: "example-result",
  scope: "record",
  severity: "error",
  title: "A worked example's formula gives the printed result within its tolerance, or that of its erratum",
  why: "Examples hold the calculator to what is printed elsewhere; one that does not come out holds it to a slip.",
  bad: '"formula": "resistor-at-current", "inputs": { "volts": "10 V", "amps": "2 A" }, "result": "20", "unit": "ohm"',
  good: '"formula": "resistor-at-current", "inputs": { "volts": "10 V", "amps": "2 A" }, "result": "5", "unit": "ohm"',
  kinds: ["worked-example"],
  check: (record) => (record.value as WorkedExampleFile).examples.flatMap((example, index) => faultsOf(example, ["examples", index])),
};

function faultsOf(example: WorkedExample, path: Path): Complaint[] {
  const formula = allFormulas.find(({ id }) => id === example.formula);
  const output = formula?.outputs[example.output];
  // What the formula does not have is another rule's matter.
  if (formula === undefined || output === undefined || Object.keys(example.inputs).some((name) => formula.inputs[name] === undefined))
    return [];
  const inputs = inputsOf(example, formula, path);
  const inUnit = (number: string | number, at: Path) => read(`${number} ${example.unit}`, output.dimension, at);
  const printed = inUnit(example.result, [...path, "unit"]);
  const tolerance = inUnit(example.tolerance.absolute, [...path, "unit"]);
  const right = example.erratum === undefined ? undefined : inUnit(example.erratum.value, [...path, "erratum", "value"]);
  if (inputs.complaints.length > 0) return inputs.complaints;
  if (typeof printed !== "number") return [printed];
  if (typeof tolerance !== "number") return [tolerance];
  if (right !== undefined && typeof right !== "number") return [right];
  const value = computed(formula, inputs.values, example.output);
  if (typeof value === "string") return [{ at: { path: [...path, "inputs"], part: "key" }, message: value }];
  const wanted = right ?? printed;
  if (Math.abs(value - wanted) <= HAIR * tolerance) return [];
  const unit = wanted === 0 ? 1 : Number(right === undefined ? example.result : example.erratum?.value) / wanted;
  return [
    {
      at: { path: right === undefined ? [...path, "result"] : [...path, "erratum", "value"] },
      message: "the example does not come out",
      received: `${right === undefined ? example.result : example.erratum?.value} ${example.unit}`,
      expected: `${Number((value * unit).toPrecision(6))} ${example.unit}, give or take ${example.tolerance.absolute}`,
    },
  ];
}

function computed(formula: Formula, values: Readonly<Record<string, number | readonly number[]>>, output: string): number | string {
  try {
    return formula.compute(values)[output] ?? Number.NaN;
  } catch (error) {
    if (error instanceof FormulaError) return error.message;
    throw error;
  }
}

function inputsOf(example: WorkedExample, { inputs }: Formula, path: Path) {
  const complaints: Complaint[] = [];
  const values: Record<string, number | readonly number[]> = {};
  for (const [name, written] of Object.entries(example.inputs)) {
    const { dimension, list } = inputs[name]!;
    const at = [...path, "inputs", name];
    const all = [written].flat().map((text, index) => read(text, dimension, Array.isArray(written) ? [...at, index] : at));
    for (const one of all) if (typeof one !== "number") complaints.push(one);
    const numbers = all.filter((one) => typeof one === "number");
    values[name] = list ? numbers : (numbers[0] ?? Number.NaN);
  }
  return { complaints, values };
}

function read(text: string, dimension: Parameters<typeof readFormulaValue>[1], path: Path): number | Complaint {
  const value = readFormulaValue(text, dimension);
  if (value.ok) return value.value;
  const { message, expected, nearest } = value.problem;
  return { at: { path }, message, received: asWritten(text), expected, ...(nearest === undefined ? {} : { nearest }) };
}
