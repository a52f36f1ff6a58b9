import { defineFormula } from "../defineFormula.ts";

/** Perveance from one point: k = I/V^(3/2). SI base units in and out; FormulaError outside the limits. */
export const diodePerveance = defineFormula({
  id: "diode-perveance",
  area: "tubes",
  title: "Perveance from one point",
  expression: "k = I/V^(3/2)",
  inputs: {
    amps: { symbol: "I", dimension: "current", meaning: "current", above: 0 },
    volts: { symbol: "V", dimension: "voltage", meaning: "plate voltage, or (for a triode) Vp/mu + Vg", above: 0 },
  },
  outputs: {
    perveance: { symbol: "k", dimension: "perveance", meaning: "perveance" },
  },
  limits: "Space-charge-limited.",
  source: "circuit-theory",
  compute: ({ amps, volts }) => ({ perveance: amps / volts ** 1.5 }),
});
