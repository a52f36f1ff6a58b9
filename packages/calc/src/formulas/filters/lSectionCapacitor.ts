import { defineFormula } from "../defineFormula.ts";

/**
 * Capacitor of a choke-input L section for a ripple factor: C = sqrt(2)/(12 w^2 L g).
 * SI base units in and out; FormulaError outside the limits.
 */
export const lSectionCapacitor = defineFormula({
  id: "l-section-capacitor",
  area: "filters",
  title: "Capacitor of a choke-input L section for a ripple factor",
  expression: "C = sqrt(2)/(12 w^2 L g)",
  inputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "choke", above: 0 },
    rippleFactor: { symbol: "g", dimension: "ratio", meaning: "RMS ripple divided by the direct voltage", above: 0, maximum: 0.047 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
  },
  outputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor" },
  },
  limits: "Full wave, w of the line, choke above critical; the bound on g keeps 4 w^2 L C above 10.",
  source: "circuit-theory",
  compute: ({ henries, rippleFactor, lineHertz }) => ({
    farads: Math.SQRT2 / (12 * (2 * Math.PI * lineHertz) ** 2 * henries * rippleFactor),
  }),
});
