import { defineFormula } from "../defineFormula.ts";

/** Discharging a capacitor through a resistor: V = V0 exp(-t/(R C)). SI base units in and out; FormulaError outside the limits. */
export const rcDischarge = defineFormula({
  id: "rc-discharge",
  area: "transients",
  title: "Discharging a capacitor through a resistor",
  expression: "V = V0 exp(-t/(R C))",
  inputs: {
    startVolts: { symbol: "V0", dimension: "voltage", meaning: "voltage at the start" },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistor", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor", above: 0 },
    seconds: { symbol: "t", dimension: "time", meaning: "time since the start", minimum: 0 },
  },
  outputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage left" },
    timeConstant: { symbol: "tau", dimension: "time", meaning: "R C" },
  },
  limits: "Nothing else across the capacitor. Dielectric absorption brings some of the voltage back: measure, do not trust a sum.",
  source: "capacitor-discharge-sheet",
  compute: ({ startVolts, ohms, farads, seconds }) => {
    const timeConstant = ohms * farads;
    return { volts: startVolts * Math.exp(-seconds / timeConstant), timeConstant };
  },
});
