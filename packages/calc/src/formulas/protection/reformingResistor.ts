import { defineFormula } from "../defineFormula.ts";

/**
 * Resistor to reform an electrolytic capacitor through: R = V/I; P = V^2/R; t = 5 R C.
 * SI base units in and out; FormulaError outside the limits.
 */
export const reformingResistor = defineFormula({
  id: "reforming-resistor",
  area: "protection",
  title: "Resistor to reform an electrolytic capacitor through",
  expression: "R = V/I; P = V^2/R; t = 5 R C",
  inputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "reforming voltage", above: 0 },
    limitAmps: { symbol: "I", dimension: "current", meaning: "current even into a short", above: 0, maximum: 0.05, default: 0.005 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance", above: 0 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistor" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it if the capacitor is shorted" },
    settleSeconds: { symbol: "t", dimension: "time", meaning: "time to charge without leakage" },
  },
  limits: "Up to 50 mA; 5 mA is gentle. Never unattended: an old can may burst.",
  source: "jan-c-62",
  compute: ({ volts, limitAmps, farads }) => {
    const ohms = volts / limitAmps;
    return { ohms, watts: volts * limitAmps, settleSeconds: 5 * ohms * farads };
  },
});
