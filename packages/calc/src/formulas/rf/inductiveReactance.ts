import { defineFormula } from "../defineFormula.ts";

/** Reactance of an inductance: X = 2 pi f L. SI base units in and out; FormulaError outside the limits. */
export const inductiveReactance = defineFormula({
  id: "inductive-reactance",
  area: "rf",
  title: "Reactance of an inductance",
  expression: "X = 2 pi f L",
  inputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency", minimum: 0 },
    henries: { symbol: "L", dimension: "inductance", meaning: "inductance", minimum: 0 },
  },
  outputs: {
    ohms: { symbol: "X", dimension: "resistance", meaning: "reactance" },
  },
  limits: "Below the coil's own resonance.",
  source: "lessons-ac",
  compute: ({ hertz, henries }) => ({ ohms: 2 * Math.PI * hertz * henries }),
});
