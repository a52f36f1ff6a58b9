import { defineFormula } from "../defineFormula.ts";

/**
 * Charging a capacitor through a resistor: V = E (1 - exp(-t/(R C))); I = (E/R) exp(-t/(R C)).
 * SI base units in and out; FormulaError outside the limits.
 */
export const rcCharge = defineFormula({
  id: "rc-charge",
  area: "transients",
  title: "Charging a capacitor through a resistor",
  expression: "V = E (1 - exp(-t/(R C))); I = (E/R) exp(-t/(R C))",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "supply" },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistor", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor, empty at the start", above: 0 },
    seconds: { symbol: "t", dimension: "time", meaning: "time since the switch closed", minimum: 0 },
  },
  outputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage of the capacitor" },
    amps: { symbol: "I", dimension: "current", meaning: "current" },
    timeConstant: { symbol: "tau", dimension: "time", meaning: "R C" },
  },
  limits: "Constant supply, capacitor without leakage.",
  source: "lessons-dc",
  compute: ({ supplyVolts, ohms, farads, seconds }) => {
    const timeConstant = ohms * farads;
    return {
      volts: -supplyVolts * Math.expm1(-seconds / timeConstant),
      amps: (supplyVolts / ohms) * Math.exp(-seconds / timeConstant),
      timeConstant,
    };
  },
});
