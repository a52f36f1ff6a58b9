import { defineFormula } from "../defineFormula.ts";

/**
 * Reflected and delivered power of a mismatch: Pr = G^2 Pf; G = (S - 1)/(S + 1).
 * SI base units in and out; FormulaError outside the limits.
 */
export const mismatchPower = defineFormula({
  id: "mismatch-power",
  area: "rf",
  title: "Reflected and delivered power of a mismatch",
  expression: "Pr = G^2 Pf; G = (S - 1)/(S + 1)",
  inputs: {
    forwardWatts: { symbol: "Pf", dimension: "power", meaning: "forward power", minimum: 0 },
    swr: { symbol: "S", dimension: "ratio", meaning: "standing-wave ratio", minimum: 1 },
  },
  outputs: {
    reflectedWatts: { symbol: "Pr", dimension: "power", meaning: "reflected power" },
    loadWatts: { symbol: "PL", dimension: "power", meaning: "power that goes on" },
    lossDecibels: { symbol: "L", dimension: "level", meaning: "loss by the mismatch" },
  },
  limits: "Lossless line.",
  source: "circuit-theory",
  compute: ({ forwardWatts, swr }) => {
    const share = ((swr - 1) / (swr + 1)) ** 2;
    return { reflectedWatts: share * forwardWatts, loadWatts: (1 - share) * forwardWatts, lossDecibels: -10 * Math.log10(1 - share) };
  },
});
