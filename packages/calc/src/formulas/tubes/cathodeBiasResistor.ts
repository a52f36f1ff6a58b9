import { defineFormula } from "../defineFormula.ts";

/** Cathode bias resistor: Rk = Vb/(Ip + Ig2). SI base units in and out; FormulaError outside the limits. */
export const cathodeBiasResistor = defineFormula({
  id: "cathode-bias-resistor",
  area: "tubes",
  title: "Cathode bias resistor",
  expression: "Rk = Vb/(Ip + Ig2)",
  inputs: {
    biasVolts: { symbol: "Vb", dimension: "voltage", meaning: "bias, as a positive number", above: 0 },
    plateAmps: { symbol: "Ip", dimension: "current", meaning: "plate current", above: 0 },
    screenAmps: { symbol: "Ig2", dimension: "current", meaning: "screen current", minimum: 0, default: 0 },
  },
  outputs: {
    ohms: { symbol: "Rk", dimension: "resistance", meaning: "cathode resistor" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it" },
  },
  limits: "No signal. For tubes that share a resistor, the sum of their currents.",
  source: "circuit-theory",
  compute: ({ biasVolts, plateAmps, screenAmps }) => ({
    ohms: biasVolts / (plateAmps + screenAmps),
    watts: biasVolts * (plateAmps + screenAmps),
  }),
});
