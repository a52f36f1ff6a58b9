import { defineFormula } from "../defineFormula.ts";

/** Reactance of a capacitance: X = 1/(2 pi f C). SI base units in and out; FormulaError outside the limits. */
export const capacitiveReactance = defineFormula({
  id: "capacitive-reactance",
  area: "rf",
  title: "Reactance of a capacitance",
  expression: "X = 1/(2 pi f C)",
  inputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance", above: 0 },
  },
  outputs: {
    ohms: { symbol: "X", dimension: "resistance", meaning: "reactance" },
  },
  limits: "Below the part's own resonance.",
  source: "lessons-ac",
  compute: ({ hertz, farads }) => ({ ohms: 1 / (2 * Math.PI * hertz * farads) }),
});
