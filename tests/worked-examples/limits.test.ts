import { expect, test } from "vitest";
import { FormulaError, type FormulaInput, type FormulaValues } from "../../packages/calc/src/formulas/index.ts";
import { argumentsOf, examples, formulaOf } from "./readExamples.ts";

/** Values that an argument must refuse, each just outside what it says of itself. */
function refused(input: FormulaInput): number[] {
  const size = Math.max(1, Math.abs(input.minimum ?? 0), Math.abs(input.maximum ?? 0)) * 1e-3;
  return [
    Number.NaN,
    Number.NEGATIVE_INFINITY,
    ...(input.open ? [] : [Number.POSITIVE_INFINITY]),
    ...(input.above === undefined ? [] : [input.above, input.above - 1]),
    ...(input.below === undefined ? [] : [input.below, input.below + 1]),
    ...(input.minimum === undefined ? [] : [input.minimum - size]),
    ...(input.maximum === undefined ? [] : [input.maximum + size]),
    ...(input.whole ? [1.5] : []),
  ];
}

function errorOf(work: () => unknown): unknown {
  try {
    return work();
  } catch (error) {
    return error;
  }
}

const firstOfEach = [...new Map(examples.map((example) => [example.formula, example])).values()];

test.each(firstOfEach.map((example) => [example.formula, example] as const))("%s refuses what lies outside its limits", (id, example) => {
  const formula = formulaOf(example);
  const given = argumentsOf(example);
  for (const [name, input] of Object.entries(formula.inputs)) {
    for (const value of refused(input)) {
      const error = errorOf(() => formula.compute({ ...given, [name]: input.list ? [value] : value }));
      expect(error, `${name} = ${value}`).toBeInstanceOf(FormulaError);
      expect(error, `${name} = ${value}`).toMatchObject({ formula: id, argument: name, value });
    }
  }
});

test.each(firstOfEach.map((example) => [example.formula, example] as const))(
  "%s asks for every argument without a default",
  (_, example) => {
    const formula = formulaOf(example);
    const given = argumentsOf(example);
    for (const [name, input] of Object.entries(formula.inputs)) {
      const { [name]: _left, ...rest } = given as Record<string, number | readonly number[]>;
      const error = errorOf(() => formula.compute(rest));
      if (input.default === undefined) expect(error).toMatchObject({ argument: name, limit: "must be given" });
    }
    expect(errorOf(() => formula.compute({ ...given, surplus: 1 }))).toMatchObject({ argument: "surplus" });
  },
);

/** A number from 0 to 1 by a linear congruence, the same on every machine. */
function* randoms(): Generator<number, never> {
  let state = 20251125;
  for (;;) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield state / 2 ** 32;
  }
}

test.each(firstOfEach.map((example) => [example.formula, example] as const))("%s gives finite numbers or a FormulaError", (_, example) => {
  const formula = formulaOf(example);
  const given = argumentsOf(example);
  const random = randoms();
  const roll = (value: number, input: FormulaInput): number => {
    const dice = random.next().value;
    if (dice < 0.05) return 0;
    if (dice < 0.1) return input.open ? Number.POSITIVE_INFINITY : (input.minimum ?? input.maximum ?? value);
    if (input.dimension === "temperature") return value * (0.9 + 0.2 * random.next().value);
    const rolled = (value === 0 ? 1 : value) * 10 ** (12 * random.next().value - 6);
    return input.whole ? Math.round(rolled) : rolled;
  };
  let finished = 0;
  for (let round = 0; round < 200; round += 1) {
    const entries = Object.entries(formula.inputs).map(([name, input]) => {
      const value = given[name] ?? input.default ?? 1;
      return [
        name,
        typeof value === "number" ? roll(value === Number.POSITIVE_INFINITY ? 1e4 : value, input) : value.map((each) => roll(each, input)),
      ] as const;
    });
    const values = Object.fromEntries(entries) as FormulaValues;
    const result = errorOf(() => formula.compute(values));
    if (result instanceof FormulaError) continue;
    finished += 1;
    expect(Object.values(result as Record<string, number>).every(Number.isFinite), JSON.stringify(values)).toBe(true);
  }
  expect(finished).toBeGreaterThan(0);
});
