import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Bleeder that discharges a filter in time: R = t/(C ln(V0/V1)); P = V0^2/R. SI base units in and out; FormulaError outside the limits. */
export const bleederForTime = defineFormula({
  id: "bleeder-for-time",
  area: "protection",
  title: "Bleeder that discharges a filter in time",
  expression: "R = t/(C ln(V0/V1)); P = V0^2/R",
  inputs: {
    volts: { symbol: "V0", dimension: "voltage", meaning: "voltage at the start", above: 0 },
    limitVolts: { symbol: "V1", dimension: "voltage", meaning: "voltage to be reached", above: 0 },
    seconds: { symbol: "t", dimension: "time", meaning: "time allowed", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "all filter capacitance", above: 0 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "largest bleeder" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it" },
  },
  limits: "The limit lies below the start. A bleeder can be open: measure before touching.",
  source: "capacitor-discharge-sheet",
  compute: ({ volts, limitVolts, seconds, farads }) => {
    requireThat(limitVolts < volts, "limitVolts", limitVolts, "must be below volts");
    const ohms = seconds / (farads * Math.log(volts / limitVolts));
    return { ohms, watts: volts ** 2 / ohms };
  },
});
