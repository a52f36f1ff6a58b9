import { defineFormula } from "../defineFormula.ts";

/** Current and power of a resistor across a voltage: I = V/R; P = V^2/R. SI base units in and out; FormulaError outside the limits. */
export const resistorAtVoltage = defineFormula({
  id: "resistor-at-voltage",
  area: "dc",
  title: "Current and power of a resistor across a voltage",
  expression: "I = V/R; P = V^2/R",
  inputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage across the resistor" },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance", above: 0, open: true },
  },
  outputs: {
    amps: { symbol: "I", dimension: "current", meaning: "current" },
    watts: { symbol: "P", dimension: "power", meaning: "power turned into heat" },
  },
  limits: "Direct current, or RMS values of alternating current in a pure resistance.",
  source: "lessons-dc",
  compute: ({ volts, ohms }) => ({ amps: volts / ohms, watts: volts ** 2 / ohms }),
});
