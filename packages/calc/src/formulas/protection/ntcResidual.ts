import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Residual resistance of an inrush limiter at part of its current: R = R1 (I1/I)^n.
 * SI base units in and out; FormulaError outside the limits.
 */
export const ntcResidual = defineFormula({
  id: "ntc-residual",
  area: "protection",
  title: "Residual resistance of an inrush limiter at part of its current",
  expression: "R = R1 (I1/I)^n",
  inputs: {
    ratedOhms: { symbol: "R1", dimension: "resistance", meaning: "residual resistance at the rated current", above: 0 },
    ratedAmps: { symbol: "I1", dimension: "current", meaning: "rated current", above: 0 },
    amps: { symbol: "I", dimension: "current", meaning: "current there is", above: 0 },
    exponent: { symbol: "n", dimension: "ratio", meaning: "exponent; from two points of the sheet", above: 0, maximum: 2, default: 1.05 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance when hot" },
    dropVolts: { symbol: "V", dimension: "voltage", meaning: "drop" },
    watts: { symbol: "P", dimension: "power", meaning: "heat" },
  },
  limits: "From half the rated current to the rated one, in still air.",
  source: "inrush-limiter-sheets",
  compute: ({ ratedOhms, ratedAmps, amps, exponent }) => {
    requireThat(amps <= ratedAmps, "amps", amps, "must not be above ratedAmps");
    requireThat(amps >= ratedAmps / 2, "amps", amps, "must be at least half of ratedAmps");
    const ohms = ratedOhms * (ratedAmps / amps) ** exponent;
    return { ohms, dropVolts: amps * ohms, watts: amps ** 2 * ohms };
  },
});
