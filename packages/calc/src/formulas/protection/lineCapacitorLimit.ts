import { defineFormula } from "../defineFormula.ts";

/** Largest line-to-chassis capacitance for a touch current: C = I/(2 pi f V). SI base units in and out; FormulaError outside the limits. */
export const lineCapacitorLimit = defineFormula({
  id: "line-capacitor-limit",
  area: "protection",
  title: "Largest line-to-chassis capacitance for a touch current",
  expression: "C = I/(2 pi f V)",
  inputs: {
    amps: { symbol: "I", dimension: "current", meaning: "touch current allowed", minimum: 0 },
    volts: { symbol: "V", dimension: "voltage", meaning: "highest line voltage, RMS", above: 0 },
    hertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
  },
  outputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "all capacitance from line to chassis together" },
  },
  limits: "Pure sine, tolerance included in the capacitance. Which limit applies is for the local code to say.",
  source: "lessons-ac",
  compute: ({ amps, volts, hertz }) => ({ farads: amps / (2 * Math.PI * hertz * volts) }),
});
