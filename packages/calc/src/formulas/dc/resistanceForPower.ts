import { defineFormula } from "../defineFormula.ts";

/** Resistance of a load from its rated voltage and power: R = V^2/P. SI base units in and out; FormulaError outside the limits. */
export const resistanceForPower = defineFormula({
  id: "resistance-for-power",
  area: "dc",
  title: "Resistance of a load from its rated voltage and power",
  expression: "R = V^2/P",
  inputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "rated voltage", above: 0 },
    watts: { symbol: "P", dimension: "power", meaning: "rated power", above: 0 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance at that voltage" },
  },
  limits: "At the rated voltage: lamps and heaters have less resistance when cold.",
  source: "lessons-ac",
  compute: ({ volts, watts }) => ({ ohms: volts ** 2 / watts }),
});
