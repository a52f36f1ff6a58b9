import { defineFormula } from "../defineFormula.ts";

/** Ripple factor: g = Vr/Vdc. SI base units in and out; FormulaError outside the limits. */
export const rippleFactor = defineFormula({
  id: "ripple-factor",
  area: "filters",
  title: "Ripple factor",
  expression: "g = Vr/Vdc",
  inputs: {
    rippleVolts: { symbol: "Vr", dimension: "voltage", meaning: "RMS ripple", minimum: 0 },
    averageVolts: { symbol: "Vdc", dimension: "voltage", meaning: "direct voltage", above: 0 },
  },
  outputs: {
    rippleFactor: { symbol: "g", dimension: "ratio", meaning: "RMS ripple as a share of the direct voltage" },
  },
  limits: "A true-RMS meter behind a blocking capacitor; an average-reading one is wrong by the shape.",
  source: "neets-module-6",
  compute: ({ rippleVolts, averageVolts }) => ({ rippleFactor: rippleVolts / averageVolts }),
});
