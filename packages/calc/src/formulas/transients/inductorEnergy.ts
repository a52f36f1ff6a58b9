import { defineFormula } from "../defineFormula.ts";

/** Energy of an inductor: W = L I^2/2. SI base units in and out; FormulaError outside the limits. */
export const inductorEnergy = defineFormula({
  id: "inductor-energy",
  area: "transients",
  title: "Energy of an inductor",
  expression: "W = L I^2/2",
  inputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "inductance", minimum: 0 },
    amps: { symbol: "I", dimension: "current", meaning: "current" },
  },
  outputs: {
    joules: { symbol: "W", dimension: "energy", meaning: "energy" },
  },
  limits: "Without saturation: an iron core holds less than its small-signal inductance says.",
  source: "circuit-theory",
  compute: ({ henries, amps }) => ({ joules: (henries * amps ** 2) / 2 }),
});
