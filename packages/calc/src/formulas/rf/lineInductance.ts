import { defineFormula } from "../defineFormula.ts";

/** Inductance of a line from its capacitance: L = Z0^2 C. SI base units in and out; FormulaError outside the limits. */
export const lineInductance = defineFormula({
  id: "line-inductance",
  area: "rf",
  title: "Inductance of a line from its capacitance",
  expression: "L = Z0^2 C",
  inputs: {
    lineOhms: { symbol: "Z0", dimension: "resistance", meaning: "characteristic impedance", above: 0 },
    capacitance: { symbol: "C", dimension: "capacitance-per-length", meaning: "capacitance for each metre", above: 0 },
  },
  outputs: {
    inductance: { symbol: "L", dimension: "inductance-per-length", meaning: "inductance for each metre" },
  },
  limits: "Low losses.",
  source: "circuit-theory",
  compute: ({ lineOhms, capacitance }) => ({ inductance: lineOhms ** 2 * capacitance }),
});
