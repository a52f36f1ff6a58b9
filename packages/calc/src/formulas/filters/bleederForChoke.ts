import { defineFormula } from "../defineFormula.ts";

/** Bleeder that keeps a choke above critical: Rb = 3 w L. SI base units in and out; FormulaError outside the limits. */
export const bleederForChoke = defineFormula({
  id: "bleeder-for-choke",
  area: "filters",
  title: "Bleeder that keeps a choke above critical",
  expression: "Rb = 3 w L",
  inputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "choke at the bleeder current", above: 0 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
    volts: { symbol: "E", dimension: "voltage", meaning: "direct voltage, for the power", minimum: 0, default: 0 },
  },
  outputs: {
    ohms: { symbol: "Rb", dimension: "resistance", meaning: "largest bleeder" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it" },
  },
  limits: "Full wave, w of the line; the inductance at that small current, not the rated one.",
  source: "circuit-theory",
  compute: ({ henries, lineHertz, volts }) => {
    const ohms = 3 * 2 * Math.PI * lineHertz * henries;
    return { ohms, watts: volts ** 2 / ohms };
  },
});
