import { defineFormula } from "../defineFormula.ts";

/** Power and resistance from voltage and current: P = V I; R = V/I. SI base units in and out; FormulaError outside the limits. */
export const powerAndResistance = defineFormula({
  id: "power-and-resistance",
  area: "dc",
  title: "Power and resistance from voltage and current",
  expression: "P = V I; R = V/I",
  inputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage", minimum: 0 },
    amps: { symbol: "I", dimension: "current", meaning: "current", above: 0 },
  },
  outputs: {
    watts: { symbol: "P", dimension: "power", meaning: "power" },
    ohms: { symbol: "R", dimension: "resistance", meaning: "equivalent resistance" },
  },
  limits: "Direct current, or RMS values with no phase angle between them.",
  source: "lessons-dc",
  compute: ({ volts, amps }) => ({ watts: volts * amps, ohms: volts / amps }),
});
