import { defineFormula } from "../defineFormula.ts";

/**
 * Capacitance that an inrush limiter may charge at another voltage: C = C0 (V0/V)^2.
 * SI base units in and out; FormulaError outside the limits.
 */
export const ntcCapacitanceRating = defineFormula({
  id: "ntc-capacitance-rating",
  area: "protection",
  title: "Capacitance that an inrush limiter may charge at another voltage",
  expression: "C = C0 (V0/V)^2",
  inputs: {
    ratedFarads: { symbol: "C0", dimension: "capacitance", meaning: "capacitance of the sheet", above: 0 },
    ratedVolts: { symbol: "V0", dimension: "voltage", meaning: "line voltage that it holds for", above: 0 },
    volts: { symbol: "V", dimension: "voltage", meaning: "line voltage there is", above: 0 },
  },
  outputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "largest capacitance" },
  },
  limits: "Same energy, so a voltage in one measure at both places, RMS or peak.",
  source: "inrush-limiter-sheets",
  compute: ({ ratedFarads, ratedVolts, volts }) => ({ farads: ratedFarads * (ratedVolts / volts) ** 2 }),
});
