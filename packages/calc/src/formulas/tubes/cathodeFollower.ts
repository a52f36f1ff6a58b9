import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/** Cathode follower: A = mu Rk/(rp + (mu + 1) Rk); Zo = Rk||rp/(mu + 1). SI base units in and out; FormulaError outside the limits. */
export const cathodeFollower = defineFormula({
  id: "cathode-follower",
  area: "tubes",
  title: "Cathode follower",
  expression: "A = mu Rk/(rp + (mu + 1) Rk); Zo = Rk||rp/(mu + 1)",
  inputs: {
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor", above: 0 },
    plateOhms: { symbol: "rp", dimension: "resistance", meaning: "plate resistance of the tube", above: 0 },
    cathodeOhms: { symbol: "Rk", dimension: "resistance", meaning: "cathode load", above: 0 },
  },
  outputs: {
    gain: { symbol: "A", dimension: "ratio", meaning: "voltage gain, in phase" },
    outputOhms: { symbol: "Zo", dimension: "resistance", meaning: "output resistance" },
  },
  limits: "Small signals, plate at ground for the signal.",
  source: "circuit-theory",
  compute: ({ amplificationFactor, plateOhms, cathodeOhms }) => {
    return {
      gain: (amplificationFactor * cathodeOhms) / (plateOhms + (amplificationFactor + 1) * cathodeOhms),
      outputOhms: parallelOf(cathodeOhms, plateOhms / (amplificationFactor + 1)),
    };
  },
});
