import { expect, test } from "vitest";
import { defineFormula } from "./defineFormula.ts";
import { FormulaError } from "./formulaError.ts";
import { requireThat } from "./requireThat.ts";

const ohmsLaw = defineFormula({
  id: "ohms-law",
  area: "test",
  title: "Ohm's law",
  expression: "I = E/(R1 + R2)",
  inputs: {
    volts: { symbol: "E", dimension: "voltage", meaning: "voltage", maximum: 1000 },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistances", minimum: 0, list: true },
    share: { symbol: "k", dimension: "ratio", meaning: "share", above: 0, default: 1 },
  },
  outputs: { amps: { symbol: "I", dimension: "current", meaning: "current" } },
  limits: "none",
  source: "lessons-dc",
  compute: ({ volts, ohms, share }) => {
    requireThat(share < volts, "share", share, "must be below volts");
    return { amps: (share * volts) / ohms.reduce((sum, each) => sum + each, 0) };
  },
});

function errorOf(work: () => unknown): unknown {
  try {
    return work();
  } catch (error) {
    return error;
  }
}

test("computes with the default and with a value of its own", () => {
  expect(ohmsLaw.compute({ volts: 10, ohms: [2, 3] })).toEqual({ amps: 2 });
  expect(ohmsLaw.compute({ volts: 10, ohms: [2, 3], share: 0.5 })).toEqual({ amps: 1 });
});

test("an argument outside its limits is named with its value, with units, and the limit", () => {
  const error = errorOf(() => ohmsLaw.compute({ volts: 1500, ohms: [2] }));
  expect(error).toBeInstanceOf(FormulaError);
  expect(error).toMatchObject({ formula: "ohms-law", argument: "volts", value: 1500, limit: "must be at most 1 kV" });
  expect((error as Error).message).toBe("ohms-law: volts is 1.5 kV; must be at most 1 kV");
});

test("each value of a list is held against the limits", () => {
  expect(errorOf(() => ohmsLaw.compute({ volts: 1, ohms: [2, -3] }))).toMatchObject({ argument: "ohms", value: -3 });
  expect(errorOf(() => ohmsLaw.compute({ volts: 1, ohms: [] }))).toMatchObject({ argument: "ohms", limit: "must hold at least one value" });
});

test("limits between arguments carry the formula's name too", () => {
  expect(errorOf(() => ohmsLaw.compute({ volts: 1, ohms: [2], share: 3 }))).toMatchObject({
    formula: "ohms-law",
    argument: "share",
    value: 3,
  });
});

test("a result that is not finite is an error that names the result", () => {
  expect(errorOf(() => ohmsLaw.compute({ volts: 10, ohms: [0] }))).toMatchObject({ argument: "amps", value: Number.POSITIVE_INFINITY });
});

test("a fault of the body is not taken for a broken limit", () => {
  const broken = defineFormula({
    ...ohmsLaw,
    compute: () => {
      throw new TypeError("fault");
    },
  });
  expect(errorOf(() => broken.compute({ volts: 10, ohms: [1] }))).toBeInstanceOf(TypeError);
});
