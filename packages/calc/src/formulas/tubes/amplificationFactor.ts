import { defineFormula } from "../defineFormula.ts";

/**
 * Amplification factor from transconductance and plate resistance: mu = gm rp.
 * SI base units in and out; FormulaError outside the limits.
 */
export const amplificationFactor = defineFormula({
  id: "amplification-factor",
  area: "tubes",
  title: "Amplification factor from transconductance and plate resistance",
  expression: "mu = gm rp",
  inputs: {
    transconductance: { symbol: "gm", dimension: "conductance", meaning: "transconductance", above: 0 },
    plateOhms: { symbol: "rp", dimension: "resistance", meaning: "plate resistance", above: 0 },
  },
  outputs: {
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor" },
  },
  limits: "All three at one operating point.",
  source: "circuit-theory",
  compute: ({ transconductance, plateOhms }) => ({ amplificationFactor: transconductance * plateOhms }),
});
