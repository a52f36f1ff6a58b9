import { defineFormula } from "../defineFormula.ts";

/** Resistance of an NTC thermistor: R = R25 exp(B (1/T - 1/298.15 K)). SI base units in and out; FormulaError outside the limits. */
export const ntcResistance = defineFormula({
  id: "ntc-resistance",
  area: "protection",
  title: "Resistance of an NTC thermistor",
  expression: "R = R25 exp(B (1/T - 1/298.15 K))",
  inputs: {
    coldOhms: { symbol: "R25", dimension: "resistance", meaning: "resistance at 25 degC", above: 0 },
    beta: { symbol: "B", dimension: "temperature-difference", meaning: "beta", above: 0, maximum: 20000 },
    temperature: { symbol: "T", dimension: "temperature", meaning: "temperature of the body", minimum: 200, maximum: 600 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance" },
  },
  limits: "Beta constant: right near the pair of temperatures that it is given for, some percent off far away.",
  source: "inrush-limiter-sheets",
  compute: ({ coldOhms, beta, temperature }) => ({ ohms: coldOhms * Math.exp(beta * (1 / temperature - 1 / 298.15)) }),
});
