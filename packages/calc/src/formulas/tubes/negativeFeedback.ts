import { defineFormula } from "../defineFormula.ts";

/** Negative voltage feedback: A' = A/(1 + b A); Zo' = Zo/(1 + b A). SI base units in and out; FormulaError outside the limits. */
export const negativeFeedback = defineFormula({
  id: "negative-feedback",
  area: "tubes",
  title: "Negative voltage feedback",
  expression: "A' = A/(1 + b A); Zo' = Zo/(1 + b A)",
  inputs: {
    gain: { symbol: "A", dimension: "ratio", meaning: "gain without feedback", above: 0 },
    feedback: { symbol: "b", dimension: "ratio", meaning: "share of the output that is fed back", minimum: 0, maximum: 1 },
    outputOhms: { symbol: "Zo", dimension: "resistance", meaning: "output resistance without feedback", minimum: 0, default: 0 },
    distortion: { symbol: "d", dimension: "ratio", meaning: "distortion without feedback", minimum: 0, below: 1, default: 0 },
  },
  outputs: {
    closedGain: { symbol: "A'", dimension: "ratio", meaning: "gain with feedback" },
    closedOutputOhms: { symbol: "Zo'", dimension: "resistance", meaning: "output resistance with feedback" },
    closedDistortion: { symbol: "d'", dimension: "ratio", meaning: "distortion with feedback" },
    reduction: { symbol: "F", dimension: "level", meaning: "how much less gain" },
  },
  limits: "Middle of the band, where the phase is exactly reversed; nothing here says that the loop is stable.",
  source: "circuit-theory",
  compute: ({ gain, feedback, outputOhms, distortion }) => {
    const factor = 1 + feedback * gain;
    return {
      closedGain: gain / factor,
      closedOutputOhms: outputOhms / factor,
      closedDistortion: distortion / factor,
      reduction: 20 * Math.log10(factor),
    };
  },
});
