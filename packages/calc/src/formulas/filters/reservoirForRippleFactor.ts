import { defineFormula } from "../defineFormula.ts";

/** Reservoir capacitor for a given ripple factor: C = 1/(2 sqrt(3) fr g RL). SI base units in and out; FormulaError outside the limits. */
export const reservoirForRippleFactor = defineFormula({
  id: "reservoir-for-ripple-factor",
  area: "filters",
  title: "Reservoir capacitor for a given ripple factor",
  expression: "C = 1/(2 sqrt(3) fr g RL)",
  inputs: {
    rippleFactor: { symbol: "g", dimension: "ratio", meaning: "RMS ripple divided by the direct voltage", above: 0, below: 1 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
    pulses: { symbol: "p", dimension: "ratio", meaning: "charging pulses in a cycle", minimum: 1, maximum: 2, whole: true, default: 2 },
  },
  outputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "reservoir capacitor" },
  },
  limits: "Sawtooth ripple, small beside the direct voltage.",
  source: "circuit-theory",
  compute: ({ rippleFactor, loadOhms, lineHertz, pulses }) => ({
    farads: 1 / (2 * Math.sqrt(3) * pulses * lineHertz * rippleFactor * loadOhms),
  }),
});
