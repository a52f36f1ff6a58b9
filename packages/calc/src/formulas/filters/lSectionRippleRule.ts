import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Handbook rule for the ripple of a choke-input section at 120 Hz: g = 1/(L C), that is 100/(L C) %, L in H, C in uF.
 * SI base units in and out; FormulaError outside the limits.
 */
export const lSectionRippleRule = defineFormula({
  id: "l-section-ripple-rule",
  area: "filters",
  title: "Handbook rule for the ripple of a choke-input section at 120 Hz",
  expression: "g = 1/(L C), that is 100/(L C) %, L in H, C in uF",
  inputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "choke", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor", above: 0 },
  },
  outputs: {
    rippleFactor: { symbol: "g", dimension: "ratio", meaning: "RMS ripple divided by the direct voltage" },
  },
  limits: "60 Hz line, full wave; a rounded rule, theory gives 83 instead of 100. L C of at least 2 H uF.",
  source: "from-memory",
  compute: ({ henries, farads }) => {
    const product = henries * farads * 1e6;
    requireThat(product >= 2, "farads", farads, "must be so large that L C is at least 2 H uF");
    return { rippleFactor: 1 / product };
  },
});
