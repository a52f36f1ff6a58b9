import { defineFormula } from "../defineFormula.ts";

/** Resonant frequency: f = 1/(2 pi sqrt(L C)). SI base units in and out; FormulaError outside the limits. */
export const resonance = defineFormula({
  id: "resonance",
  area: "rf",
  title: "Resonant frequency",
  expression: "f = 1/(2 pi sqrt(L C))",
  inputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "inductance", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance", above: 0 },
  },
  outputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "resonant frequency" },
    reactanceOhms: { symbol: "X", dimension: "resistance", meaning: "reactance of either part there" },
  },
  limits: "Low losses: Q of 10 and more.",
  source: "lessons-ac",
  compute: ({ henries, farads }) => ({
    hertz: 1 / (2 * Math.PI * Math.sqrt(henries * farads)),
    reactanceOhms: Math.sqrt(henries / farads),
  }),
});
