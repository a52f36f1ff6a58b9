import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Ripple factor of a choke-input L section: g = sqrt(2)/(12 w^2 L C). SI base units in and out; FormulaError outside the limits. */
export const lSectionRipple = defineFormula({
  id: "l-section-ripple",
  area: "filters",
  title: "Ripple factor of a choke-input L section",
  expression: "g = sqrt(2)/(12 w^2 L C)",
  inputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "choke", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor", above: 0 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
  },
  outputs: {
    rippleFactor: { symbol: "g", dimension: "ratio", meaning: "RMS ripple divided by the direct voltage" },
  },
  limits: "Full wave, w of the line, choke above critical, 4 w^2 L C of at least 10: well above the section's resonance.",
  source: "circuit-theory",
  compute: ({ henries, farads, lineHertz }) => {
    const product = (2 * Math.PI * lineHertz) ** 2 * henries * farads;
    requireThat(4 * product >= 10, "farads", farads, "must be so large that 4 w^2 L C is at least 10");
    return { rippleFactor: Math.SQRT2 / (12 * product) };
  },
});
