import { defineFormula } from "../defineFormula.ts";

/** Capacitance that resonates an inductance: C = 1/((2 pi f)^2 L). SI base units in and out; FormulaError outside the limits. */
export const resonatingCapacitance = defineFormula({
  id: "resonating-capacitance",
  area: "rf",
  title: "Capacitance that resonates an inductance",
  expression: "C = 1/((2 pi f)^2 L)",
  inputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency", above: 0 },
    henries: { symbol: "L", dimension: "inductance", meaning: "inductance", above: 0 },
  },
  outputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance" },
  },
  limits: "Strays and the coil's own capacitance are part of it.",
  source: "lessons-ac",
  compute: ({ hertz, henries }) => ({ farads: 1 / ((2 * Math.PI * hertz) ** 2 * henries) }),
});
