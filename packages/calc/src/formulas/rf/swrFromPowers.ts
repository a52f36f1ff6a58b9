import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Standing-wave ratio and load power from a directional wattmeter: P = Pf - Pr; S = (1 + sqrt(Pr/Pf))/(1 - sqrt(Pr/Pf)).
 * SI base units in and out; FormulaError outside the limits.
 */
export const swrFromPowers = defineFormula({
  id: "swr-from-powers",
  area: "rf",
  title: "Standing-wave ratio and load power from a directional wattmeter",
  expression: "P = Pf - Pr; S = (1 + sqrt(Pr/Pf))/(1 - sqrt(Pr/Pf))",
  inputs: {
    forwardWatts: { symbol: "Pf", dimension: "power", meaning: "forward power", above: 0 },
    reflectedWatts: { symbol: "Pr", dimension: "power", meaning: "reflected power", minimum: 0 },
  },
  outputs: {
    loadWatts: { symbol: "P", dimension: "power", meaning: "power that goes on" },
    swr: { symbol: "S", dimension: "ratio", meaning: "standing-wave ratio" },
    reflection: { symbol: "G", dimension: "ratio", meaning: "size of the reflection coefficient" },
  },
  limits: "Reflected power below forward power.",
  source: "fcc-extra-pool",
  compute: ({ forwardWatts, reflectedWatts }) => {
    requireThat(reflectedWatts < forwardWatts, "reflectedWatts", reflectedWatts, "must be below forwardWatts");
    const reflection = Math.sqrt(reflectedWatts / forwardWatts);
    return { loadWatts: forwardWatts - reflectedWatts, swr: (1 + reflection) / (1 - reflection), reflection };
  },
});
