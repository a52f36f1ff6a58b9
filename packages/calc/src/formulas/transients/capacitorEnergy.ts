import { defineFormula } from "../defineFormula.ts";

/** Energy and charge of a capacitor: W = C V^2/2; Q = C V. SI base units in and out; FormulaError outside the limits. */
export const capacitorEnergy = defineFormula({
  id: "capacitor-energy",
  area: "transients",
  title: "Energy and charge of a capacitor",
  expression: "W = C V^2/2; Q = C V",
  inputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor", minimum: 0 },
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage" },
  },
  outputs: {
    joules: { symbol: "W", dimension: "energy", meaning: "energy" },
    coulombs: { symbol: "Q", dimension: "charge", meaning: "charge" },
  },
  limits: "10 J and more can kill; discharge before service above 0.1 J.",
  source: "capacitor-discharge-sheet",
  compute: ({ farads, volts }) => ({ joules: (farads * volts ** 2) / 2, coulombs: farads * volts }),
});
