import { defineFormula } from "../defineFormula.ts";

/** Grid bias at projected cut-off: Vg = -Vp/mu. SI base units in and out; FormulaError outside the limits. */
export const projectedCutoff = defineFormula({
  id: "projected-cutoff",
  area: "tubes",
  title: "Grid bias at projected cut-off",
  expression: "Vg = -Vp/mu",
  inputs: {
    plateVolts: { symbol: "Vp", dimension: "voltage", meaning: "plate voltage", above: 0 },
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor", above: 0 },
  },
  outputs: {
    gridVolts: { symbol: "Vg", dimension: "voltage", meaning: "grid to cathode" },
  },
  limits: "Straight-line continuation; the current is not quite nought there, remote cut-off tubes need far more.",
  source: "fcc-element-6",
  compute: ({ plateVolts, amplificationFactor }) => ({ gridVolts: -plateVolts / amplificationFactor }),
});
