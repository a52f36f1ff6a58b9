import { defineFormula } from "../defineFormula.ts";

/** Capacitance that holds an energy at a voltage: C = 2 W/V^2. SI base units in and out; FormulaError outside the limits. */
export const capacitanceForEnergy = defineFormula({
  id: "capacitance-for-energy",
  area: "transients",
  title: "Capacitance that holds an energy at a voltage",
  expression: "C = 2 W/V^2",
  inputs: {
    joules: { symbol: "W", dimension: "energy", meaning: "energy", minimum: 0 },
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage", above: 0 },
  },
  outputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance" },
  },
  limits: "Constant capacitance.",
  source: "capacitor-discharge-sheet",
  compute: ({ joules, volts }) => ({ farads: (2 * joules) / volts ** 2 }),
});
