import { defineFormula } from "../defineFormula.ts";

/**
 * Standing-wave ratio of a resistive load: S = RL/Z0 or Z0/RL; G = (RL - Z0)/(RL + Z0).
 * SI base units in and out; FormulaError outside the limits.
 */
export const swrFromLoad = defineFormula({
  id: "swr-from-load",
  area: "rf",
  title: "Standing-wave ratio of a resistive load",
  expression: "S = RL/Z0 or Z0/RL; G = (RL - Z0)/(RL + Z0)",
  inputs: {
    lineOhms: { symbol: "Z0", dimension: "resistance", meaning: "characteristic impedance", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
  },
  outputs: {
    swr: { symbol: "S", dimension: "ratio", meaning: "standing-wave ratio" },
    reflection: { symbol: "G", dimension: "ratio", meaning: "reflection coefficient" },
  },
  limits: "Pure resistance.",
  source: "lessons-ac",
  compute: ({ lineOhms, loadOhms }) => ({
    swr: Math.max(loadOhms / lineOhms, lineOhms / loadOhms),
    reflection: (loadOhms - lineOhms) / (loadOhms + lineOhms),
  }),
});
