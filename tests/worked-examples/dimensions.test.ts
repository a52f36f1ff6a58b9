import { expect, test } from "vitest";
import type { FormulaValues } from "../../packages/calc/src/formulas/index.ts";
import { scaleOf } from "./dimensionScale.ts";
import { argumentsOf, examples, formulaOf } from "./readExamples.ts";

// A law of physics does not know how large a volt is. Every example is computed again in other units of volt, ampere, second,
// metre and kelvin; what the formula says of its dimensions must hold, or the formula is wrong.

/** Formulas whose numbers carry units: rules of thumb, tables and constants of nature. They must break the law. */
const boundToUnits = new Set([
  "critical-inductance-rule",
  "l-section-ripple-rule",
  "electrolytic-leakage-limit",
  "electrolytic-surge-voltage",
  "electrolytic-life",
  "dbm-to-watts",
  "wavelength",
  "wire-gauge",
  "ntc-resistance",
  "winding-temperature",
]);

const factors = [1.07, 1.13, 1.19, 1.23, 1.011] as const;

/** All arguments, defaults too: a default is 60 Hz, not 60 of whatever counts cycles. */
function inOtherUnits(example: (typeof examples)[number]): { given: FormulaValues; scaled: FormulaValues } {
  const { inputs } = formulaOf(example);
  const written = argumentsOf(example);
  const given: Record<string, number | readonly number[]> = {};
  const scaled: Record<string, number | readonly number[]> = {};
  for (const [name, input] of Object.entries(inputs)) {
    const value = written[name] ?? input.default ?? Number.NaN;
    const scale = scaleOf(input.dimension, factors);
    given[name] = value;
    scaled[name] = typeof value === "number" ? value * scale : value.map((each) => each * scale);
  }
  return { given, scaled };
}

function isTrueToDimension(example: (typeof examples)[number]): boolean {
  const formula = formulaOf(example);
  const { given, scaled } = inOtherUnits(example);
  const [before, after] = [formula.compute(given), formula.compute(scaled)];
  return Object.entries(formula.outputs).every(([name, { dimension }]) => {
    const wanted = (before[name] ?? Number.NaN) * scaleOf(dimension, factors);
    return Math.abs((after[name] ?? Number.NaN) - wanted) <= 1e-9 * Math.abs(wanted) + 1e-30;
  });
}

const exponentIsNotThreeHalves = (example: (typeof examples)[number]): boolean =>
  example.inputs.exponent !== undefined && example.formula === "triode-law";

test.each(
  examples
    .filter((example) => !boundToUnits.has(example.formula) && !exponentIsNotThreeHalves(example))
    .map((example) => [example.id, example] as const),
)("%s comes out the same in other units", (_, example) => {
  expect(isTrueToDimension(example)).toBe(true);
});

test.each([...boundToUnits])("%s is bound to its units", (id) => {
  expect(examples.filter(({ formula }) => formula === id).some((example) => !isTrueToDimension(example))).toBe(true);
});
