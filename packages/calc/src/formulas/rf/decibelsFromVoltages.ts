import { defineFormula } from "../defineFormula.ts";

/** Decibels from voltages: G = 20 log10(V2/V1). SI base units in and out; FormulaError outside the limits. */
export const decibelsFromVoltages = defineFormula({
  id: "decibels-from-voltages",
  area: "rf",
  title: "Decibels from voltages",
  expression: "G = 20 log10(V2/V1)",
  inputs: {
    inputVolts: { symbol: "V1", dimension: "voltage", meaning: "voltage at the input", above: 0 },
    outputVolts: { symbol: "V2", dimension: "voltage", meaning: "voltage at the output", above: 0 },
  },
  outputs: {
    decibels: { symbol: "G", dimension: "level", meaning: "gain" },
  },
  limits: "Equal resistances at both places, else it is a voltage gain in decibels only.",
  source: "lessons-semiconductors",
  compute: ({ inputVolts, outputVolts }) => ({ decibels: 20 * Math.log10(outputVolts / inputVolts) }),
});
