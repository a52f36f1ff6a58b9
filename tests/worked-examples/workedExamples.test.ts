import { expect, test } from "vitest";
import { argumentsOf, examples, formulaOf, inBase } from "./readExamples.ts";

const computed = (example: (typeof examples)[number]): number =>
  formulaOf(example).compute(argumentsOf(example))[example.output] ?? Number.NaN;

/** A hair for numbers that lie exactly half a unit away. */
const within = (value: number, wanted: number, tolerance: number): boolean => Math.abs(value - wanted) <= tolerance * (1 + 1e-6);

test.each(examples.filter(({ erratum }) => !erratum).map((example) => [example.id, example] as const))(
  "%s gives what is printed",
  (_, example) => {
    const [value, printed] = [computed(example), inBase(example, example.result)];
    expect(within(value, printed, inBase(example, example.tolerance.absolute)), `computed ${value}, printed ${printed}`).toBe(true);
  },
);

const misprints = examples.flatMap((example) => (example.erratum ? [{ ...example, erratum: example.erratum }] : []));

test.each(misprints.map((example) => [example.id, example] as const))("%s is a misprint, and its correction holds", (_, example) => {
  const [value, tolerance] = [computed(example), inBase(example, example.tolerance.absolute)];
  expect(within(value, inBase(example, example.result), tolerance), `printed ${example.result} ${example.unit}`).toBe(false);
  expect(within(value, inBase(example, example.erratum.value), tolerance), `computed ${value}`).toBe(true);
});

const exact = examples.flatMap((example) => (example.recomputed === undefined ? [] : [{ ...example, recomputed: example.recomputed }]));

test.each(exact.map((example) => [example.id, example] as const))(
  "%s agrees to six digits with the independent computation",
  (_, example) => {
    const wanted = inBase(example, example.recomputed);
    expect(Math.abs(computed(example) - wanted), `computed ${computed(example)}`).toBeLessThanOrEqual(1e-5 * Math.abs(wanted));
  },
);

test("there are misprints and independent values to hold against", () => {
  expect(misprints.length).toBeGreaterThanOrEqual(4);
  expect(exact.length).toBeGreaterThanOrEqual(150);
});
