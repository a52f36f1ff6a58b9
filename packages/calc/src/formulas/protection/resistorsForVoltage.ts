import { defineFormula } from "../defineFormula.ts";

/** Equal resistors in series for a voltage: n = ceil(V/(k Vmax)). SI base units in and out; FormulaError outside the limits. */
export const resistorsForVoltage = defineFormula({
  id: "resistors-for-voltage",
  area: "protection",
  title: "Equal resistors in series for a voltage",
  expression: "n = ceil(V/(k Vmax))",
  inputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage across the chain", above: 0 },
    limitVolts: { symbol: "Vmax", dimension: "voltage", meaning: "limit of each", above: 0 },
    share: { symbol: "k", dimension: "ratio", meaning: "share of the limit to use", above: 0, maximum: 1, default: 0.8 },
  },
  outputs: {
    count: { symbol: "n", dimension: "ratio", meaning: "resistors" },
    eachVolts: { symbol: "Vn", dimension: "voltage", meaning: "voltage of each" },
  },
  limits: "Equal values.",
  source: "film-resistor-sheets",
  compute: ({ volts, limitVolts, share }) => {
    const count = Math.ceil(volts / (share * limitVolts) - 1e-9);
    return { count, eachVolts: volts / count };
  },
});
