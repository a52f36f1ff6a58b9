import { defineFormula } from "../defineFormula.ts";

/** Choke for a ripple factor without capacitor: L = RL/(3 sqrt(2) w g). SI base units in and out; FormulaError outside the limits. */
export const inductorForRippleFactor = defineFormula({
  id: "inductor-for-ripple-factor",
  area: "filters",
  title: "Choke for a ripple factor without capacitor",
  expression: "L = RL/(3 sqrt(2) w g)",
  inputs: {
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
    rippleFactor: { symbol: "g", dimension: "ratio", meaning: "RMS ripple divided by the direct voltage", above: 0, below: 0.48 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
  },
  outputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "choke" },
  },
  limits: "Full wave, w of the line; g below the 0.48 of no filter at all.",
  source: "circuit-theory",
  compute: ({ loadOhms, rippleFactor, lineHertz }) => ({ henries: loadOhms / (3 * Math.SQRT2 * 2 * Math.PI * lineHertz * rippleFactor) }),
});
