import { defineFormula } from "../defineFormula.ts";

/**
 * Longest time constant of an AM diode detector: R C = sqrt(1 - m^2)/(2 pi f m).
 * SI base units in and out; FormulaError outside the limits.
 */
export const detectorTimeConstant = defineFormula({
  id: "detector-time-constant",
  area: "rf",
  title: "Longest time constant of an AM diode detector",
  expression: "R C = sqrt(1 - m^2)/(2 pi f m)",
  inputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "detector load", above: 0 },
    hertz: { symbol: "f", dimension: "frequency", meaning: "highest modulating frequency", above: 0 },
    modulation: { symbol: "m", dimension: "ratio", meaning: "modulation index there", above: 0, below: 1 },
  },
  outputs: {
    seconds: { symbol: "t", dimension: "time", meaning: "longest time constant" },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor that gives it" },
  },
  limits: "Sine modulation; beyond it the detector fails to follow the trough.",
  source: "circuit-theory",
  compute: ({ ohms, hertz, modulation }) => {
    const seconds = Math.sqrt(1 - modulation ** 2) / (2 * Math.PI * hertz * modulation);
    return { seconds, farads: seconds / ohms };
  },
});
