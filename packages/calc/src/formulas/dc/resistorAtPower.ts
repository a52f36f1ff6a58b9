import { defineFormula } from "../defineFormula.ts";

/**
 * Voltage and current of a resistor that turns a power into heat: V = sqrt(P R); I = sqrt(P/R).
 * SI base units in and out; FormulaError outside the limits.
 */
export const resistorAtPower = defineFormula({
  id: "resistor-at-power",
  area: "dc",
  title: "Voltage and current of a resistor that turns a power into heat",
  expression: "V = sqrt(P R); I = sqrt(P/R)",
  inputs: {
    watts: { symbol: "P", dimension: "power", meaning: "power", minimum: 0 },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance", above: 0 },
  },
  outputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage, RMS where it alternates" },
    amps: { symbol: "I", dimension: "current", meaning: "current, RMS where it alternates" },
  },
  limits: "Pure resistance.",
  source: "lessons-dc",
  compute: ({ watts, ohms }) => ({ volts: Math.sqrt(watts * ohms), amps: Math.sqrt(watts / ohms) }),
});
