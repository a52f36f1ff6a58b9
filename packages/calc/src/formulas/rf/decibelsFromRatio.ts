import { defineFormula } from "../defineFormula.ts";

/** Decibels from a power ratio: G = 10 log10(r). SI base units in and out; FormulaError outside the limits. */
export const decibelsFromRatio = defineFormula({
  id: "decibels-from-ratio",
  area: "rf",
  title: "Decibels from a power ratio",
  expression: "G = 10 log10(r)",
  inputs: {
    ratio: { symbol: "r", dimension: "ratio", meaning: "power ratio, or ratio of noise bandwidths", above: 0 },
  },
  outputs: {
    decibels: { symbol: "G", dimension: "level", meaning: "gain" },
  },
  limits: "Power ratios; a voltage ratio counts double.",
  source: "lessons-semiconductors",
  compute: ({ ratio }) => ({ decibels: 10 * Math.log10(ratio) }),
});
