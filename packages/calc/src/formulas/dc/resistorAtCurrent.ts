import { defineFormula } from "../defineFormula.ts";

/**
 * Voltage and power of a resistor that carries a current: V = I R; P = I^2 R.
 * SI base units in and out; FormulaError outside the limits.
 */
export const resistorAtCurrent = defineFormula({
  id: "resistor-at-current",
  area: "dc",
  title: "Voltage and power of a resistor that carries a current",
  expression: "V = I R; P = I^2 R",
  inputs: {
    amps: { symbol: "I", dimension: "current", meaning: "current" },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance", minimum: 0 },
  },
  outputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage drop" },
    watts: { symbol: "P", dimension: "power", meaning: "power turned into heat" },
  },
  limits: "Direct current, or RMS values of alternating current in a pure resistance.",
  source: "lessons-dc",
  compute: ({ amps, ohms }) => ({ volts: amps * ohms, watts: amps ** 2 * ohms }),
});
