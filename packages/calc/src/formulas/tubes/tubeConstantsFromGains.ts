import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Amplification factor and plate resistance from two loads: A = mu RL/(rp + RL), twice.
 * SI base units in and out; FormulaError outside the limits.
 */
export const tubeConstantsFromGains = defineFormula({
  id: "tube-constants-from-gains",
  area: "tubes",
  title: "Amplification factor and plate resistance from two loads",
  expression: "A = mu RL/(rp + RL), twice",
  inputs: {
    firstGain: { symbol: "A1", dimension: "ratio", meaning: "gain at the lower load", above: 0 },
    firstLoadOhms: { symbol: "R1", dimension: "resistance", meaning: "lower load", above: 0 },
    secondGain: { symbol: "A2", dimension: "ratio", meaning: "gain at the higher load", above: 0 },
    secondLoadOhms: { symbol: "R2", dimension: "resistance", meaning: "higher load", above: 0 },
  },
  outputs: {
    plateOhms: { symbol: "rp", dimension: "resistance", meaning: "plate resistance" },
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor" },
  },
  limits: "Same operating current at both loads. The higher load has the higher gain, though by less than the loads differ.",
  source: "circuit-theory",
  compute: ({ firstGain, firstLoadOhms, secondGain, secondLoadOhms }) => {
    requireThat(secondLoadOhms > firstLoadOhms, "secondLoadOhms", secondLoadOhms, "must be above firstLoadOhms");
    requireThat(secondGain > firstGain, "secondGain", secondGain, "must be above firstGain");
    const slope = firstGain / firstLoadOhms - secondGain / secondLoadOhms;
    requireThat(slope > 0, "secondGain", secondGain, "must rise by less than the load does");
    const plateOhms = (secondGain - firstGain) / slope;
    return { plateOhms, amplificationFactor: firstGain * (1 + plateOhms / firstLoadOhms) };
  },
});
