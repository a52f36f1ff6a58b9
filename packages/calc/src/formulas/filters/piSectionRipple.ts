import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Ripple factor of a C-L-C filter: g = sqrt(2)/(wr^3 C1 C2 L RL). SI base units in and out; FormulaError outside the limits. */
export const piSectionRipple = defineFormula({
  id: "pi-section-ripple",
  area: "filters",
  title: "Ripple factor of a C-L-C filter",
  expression: "g = sqrt(2)/(wr^3 C1 C2 L RL)",
  inputs: {
    firstFarads: { symbol: "C1", dimension: "capacitance", meaning: "reservoir capacitor", above: 0 },
    henries: { symbol: "L", dimension: "inductance", meaning: "choke", above: 0 },
    secondFarads: { symbol: "C2", dimension: "capacitance", meaning: "output capacitor", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
    rippleHertz: { symbol: "fr", dimension: "frequency", meaning: "ripple frequency: twice the line for full wave", above: 0 },
  },
  outputs: {
    rippleFactor: { symbol: "g", dimension: "ratio", meaning: "RMS ripple divided by the direct voltage" },
  },
  limits: "wr of the ripple; choke reactance at least 3 times that of the output capacitor; fundamental of the sawtooth only.",
  source: "circuit-theory",
  compute: ({ firstFarads, henries, secondFarads, loadOhms, rippleHertz }) => {
    const omega = 2 * Math.PI * rippleHertz;

    requireThat(omega ** 2 * henries * secondFarads >= 3, "henries", henries, "must be so large that wr^2 L C2 is at least 3");
    return { rippleFactor: Math.SQRT2 / (omega ** 3 * firstFarads * secondFarads * henries * loadOhms) };
  },
});
