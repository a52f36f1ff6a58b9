import { defineFormula } from "../defineFormula.ts";

/**
 * Impedance of resistance and reactances in series: Z = sqrt(R^2 + (XL - XC)^2); phi = atan((XL - XC)/R).
 * SI base units in and out; FormulaError outside the limits.
 */
export const seriesImpedance = defineFormula({
  id: "series-impedance",
  area: "rf",
  title: "Impedance of resistance and reactances in series",
  expression: "Z = sqrt(R^2 + (XL - XC)^2); phi = atan((XL - XC)/R)",
  inputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance", minimum: 0 },
    inductiveOhms: { symbol: "XL", dimension: "resistance", meaning: "inductive reactance", minimum: 0, default: 0 },
    capacitiveOhms: { symbol: "XC", dimension: "resistance", meaning: "capacitive reactance", minimum: 0, default: 0 },
  },
  outputs: {
    impedanceOhms: { symbol: "Z", dimension: "resistance", meaning: "impedance" },
    phase: { symbol: "phi", dimension: "angle", meaning: "phase; positive: voltage leads the current" },
  },
  limits: "One frequency.",
  source: "lessons-ac",
  compute: ({ ohms, inductiveOhms, capacitiveOhms }) => {
    const reactance = inductiveOhms - capacitiveOhms;
    return { impedanceOhms: Math.hypot(ohms, reactance), phase: Math.atan2(reactance, ohms) };
  },
});
