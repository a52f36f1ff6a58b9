import { defineFormula } from "../defineFormula.ts";

/** Decibels from powers: G = 10 log10(P2/P1). SI base units in and out; FormulaError outside the limits. */
export const decibelsFromPowers = defineFormula({
  id: "decibels-from-powers",
  area: "rf",
  title: "Decibels from powers",
  expression: "G = 10 log10(P2/P1)",
  inputs: {
    inputWatts: { symbol: "P1", dimension: "power", meaning: "power at the input", above: 0, default: 1 },
    outputWatts: { symbol: "P2", dimension: "power", meaning: "power at the output", above: 0 },
  },
  outputs: {
    decibels: { symbol: "G", dimension: "level", meaning: "gain" },
  },
  limits: "Powers in whatever resistances.",
  source: "lessons-semiconductors",
  compute: ({ inputWatts, outputWatts }) => ({ decibels: 10 * Math.log10(outputWatts / inputWatts) }),
});
