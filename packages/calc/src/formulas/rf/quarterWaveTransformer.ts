import { defineFormula } from "../defineFormula.ts";

/** Quarter-wave line as a transformer: Z0 = sqrt(Z1 Z2). SI base units in and out; FormulaError outside the limits. */
export const quarterWaveTransformer = defineFormula({
  id: "quarter-wave-transformer",
  area: "rf",
  title: "Quarter-wave line as a transformer",
  expression: "Z0 = sqrt(Z1 Z2)",
  inputs: {
    firstOhms: { symbol: "Z1", dimension: "resistance", meaning: "impedance at one end", above: 0 },
    secondOhms: { symbol: "Z2", dimension: "resistance", meaning: "impedance at the other", above: 0 },
  },
  outputs: {
    lineOhms: { symbol: "Z0", dimension: "resistance", meaning: "characteristic impedance of the line" },
  },
  limits: "Resistive ends, one frequency.",
  source: "lessons-ac",
  compute: ({ firstOhms, secondOhms }) => ({ lineOhms: Math.sqrt(firstOhms * secondOhms) }),
});
