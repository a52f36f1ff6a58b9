import { defineFormula } from "../defineFormula.ts";

/** Amplification factor by restoring the plate current: mu = dVp/dVg. SI base units in and out; FormulaError outside the limits. */
export const amplificationFactorFromBalance = defineFormula({
  id: "amplification-factor-from-balance",
  area: "tubes",
  title: "Amplification factor by restoring the plate current",
  expression: "mu = dVp/dVg",
  inputs: {
    plateStepVolts: { symbol: "dVp", dimension: "voltage", meaning: "plate step that undoes the grid step", above: 0 },
    gridStepVolts: { symbol: "dVg", dimension: "voltage", meaning: "grid step", above: 0 },
  },
  outputs: {
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor" },
  },
  limits: "Small steps, plate current restored exactly.",
  source: "circuit-theory",
  compute: ({ plateStepVolts, gridStepVolts }) => ({ amplificationFactor: plateStepVolts / gridStepVolts }),
});
