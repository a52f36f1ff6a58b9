import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Ripple that an LC section lets through: k = 1/(w^2 L C - 1). SI base units in and out; FormulaError outside the limits. */
export const lcSectionFactor = defineFormula({
  id: "lc-section-factor",
  area: "filters",
  title: "Ripple that an LC section lets through",
  expression: "k = 1/(w^2 L C - 1)",
  inputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "choke", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor", above: 0 },
    rippleHertz: { symbol: "fr", dimension: "frequency", meaning: "ripple frequency", above: 0 },
    rippleVolts: { symbol: "Vi", dimension: "voltage", meaning: "ripple before the section", minimum: 0, default: 1 },
  },
  outputs: {
    factor: { symbol: "k", dimension: "ratio", meaning: "share that passes" },
    outputVolts: { symbol: "Vo", dimension: "voltage", meaning: "ripple behind the section" },
  },
  limits:
    "Load much higher than the reactance of the capacitor; ripple frequency at least 1.5 times the resonance of the section, near which it makes ripple larger.",
  source: "neets-module-6",
  compute: ({ henries, farads, rippleHertz, rippleVolts }) => {
    const omega = 2 * Math.PI * rippleHertz;

    const product = omega ** 2 * henries * farads;
    requireThat(product >= 2.25, "rippleHertz", rippleHertz, "must be at least 1.5 times the resonance of L and C");
    return { factor: 1 / (product - 1), outputVolts: rippleVolts / (product - 1) };
  },
});
