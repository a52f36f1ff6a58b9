import { defineFormula } from "../defineFormula.ts";

/** Handbook rule for critical inductance at 60 Hz: Lc(H) = E(V)/I(mA). SI base units in and out; FormulaError outside the limits. */
export const criticalInductanceRule = defineFormula({
  id: "critical-inductance-rule",
  area: "filters",
  title: "Handbook rule for critical inductance at 60 Hz",
  expression: "Lc(H) = E(V)/I(mA)",
  inputs: {
    volts: { symbol: "E", dimension: "voltage", meaning: "direct voltage", above: 0 },
    amps: { symbol: "I", dimension: "current", meaning: "direct current", above: 0 },
  },
  outputs: {
    criticalHenries: { symbol: "Lc", dimension: "inductance", meaning: "least inductance" },
    optimumHenries: { symbol: "Lo", dimension: "inductance", meaning: "twice that" },
  },
  limits: "60 Hz line, full wave; rounds the theory's RL/1131 to RL/1000.",
  source: "from-memory",
  compute: ({ volts, amps }) => ({ criticalHenries: volts / (1000 * amps), optimumHenries: (2 * volts) / (1000 * amps) }),
});
