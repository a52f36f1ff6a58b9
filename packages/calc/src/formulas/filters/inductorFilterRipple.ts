import { defineFormula } from "../defineFormula.ts";

/**
 * Ripple factor of a choke alone in a full-wave supply: g = RL/(3 sqrt(2) w L).
 * SI base units in and out; FormulaError outside the limits.
 */
export const inductorFilterRipple = defineFormula({
  id: "inductor-filter-ripple",
  area: "filters",
  title: "Ripple factor of a choke alone in a full-wave supply",
  expression: "g = RL/(3 sqrt(2) w L)",
  inputs: {
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
    henries: { symbol: "L", dimension: "inductance", meaning: "choke", above: 0 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
  },
  outputs: {
    rippleFactor: { symbol: "g", dimension: "ratio", meaning: "RMS ripple divided by the direct voltage" },
  },
  limits: "Full wave, w of the line; the reactance at twice the line frequency must be large beside the load.",
  source: "circuit-theory",
  compute: ({ loadOhms, henries, lineHertz }) => ({ rippleFactor: loadOhms / (3 * Math.SQRT2 * 2 * Math.PI * lineHertz * henries) }),
});
