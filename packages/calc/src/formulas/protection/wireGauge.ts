import { defineFormula } from "../defineFormula.ts";

/**
 * Diameter and resistance of a wire gauge: d = 0.127 mm 92^((36 - n)/39); R/l = 4 rho/(pi d^2).
 * SI base units in and out; FormulaError outside the limits.
 */
export const wireGauge = defineFormula({
  id: "wire-gauge",
  area: "protection",
  title: "Diameter and resistance of a wire gauge",
  expression: "d = 0.127 mm 92^((36 - n)/39); R/l = 4 rho/(pi d^2)",
  inputs: {
    gauge: { symbol: "n", dimension: "ratio", meaning: "American wire gauge", minimum: 0, maximum: 50 },
    length: { symbol: "l", dimension: "length", meaning: "length", minimum: 0, default: 1 },
    resistivity: { symbol: "rho", dimension: "resistivity", meaning: "resistivity; copper at 20 degC", above: 0, default: 1.7241e-8 },
  },
  outputs: {
    diameter: { symbol: "d", dimension: "length", meaning: "diameter" },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance of that length" },
  },
  limits: "Solid round wire, direct current.",
  source: "wire-tables",
  compute: ({ gauge, length, resistivity }) => {
    const diameter = 0.127e-3 * 92 ** ((36 - gauge) / 39);
    return { diameter, ohms: (4 * resistivity * length) / (Math.PI * diameter ** 2) };
  },
});
