import { defineFormula } from "../defineFormula.ts";

/** Inductance that resonates a capacitance: L = 1/((2 pi f)^2 C). SI base units in and out; FormulaError outside the limits. */
export const resonatingInductance = defineFormula({
  id: "resonating-inductance",
  area: "rf",
  title: "Inductance that resonates a capacitance",
  expression: "L = 1/((2 pi f)^2 C)",
  inputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance, strays included", above: 0 },
  },
  outputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "inductance" },
  },
  limits: "Low losses.",
  source: "lessons-ac",
  compute: ({ hertz, farads }) => ({ henries: 1 / ((2 * Math.PI * hertz) ** 2 * farads) }),
});
