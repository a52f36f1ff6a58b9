import { defineFormula } from "../defineFormula.ts";

/** Ripple that an RC section lets through: k = 1/sqrt(1 + (w R C)^2). SI base units in and out; FormulaError outside the limits. */
export const rcSectionFactor = defineFormula({
  id: "rc-section-factor",
  area: "filters",
  title: "Ripple that an RC section lets through",
  expression: "k = 1/sqrt(1 + (w R C)^2)",
  inputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "series resistor", minimum: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor", above: 0 },
    rippleHertz: { symbol: "fr", dimension: "frequency", meaning: "ripple frequency", above: 0 },
    rippleVolts: { symbol: "Vi", dimension: "voltage", meaning: "ripple before the section", minimum: 0, default: 1 },
    amps: { symbol: "I", dimension: "current", meaning: "direct current through the resistor", minimum: 0, default: 0 },
  },
  outputs: {
    factor: { symbol: "k", dimension: "ratio", meaning: "share that passes" },
    outputVolts: { symbol: "Vo", dimension: "voltage", meaning: "ripple behind the section" },
    dropVolts: { symbol: "V", dimension: "voltage", meaning: "direct voltage lost in the resistor" },
  },
  limits: "Load much higher than the reactance of the capacitor.",
  source: "neets-module-6",
  compute: ({ ohms, farads, rippleHertz, rippleVolts, amps }) => {
    const omega = 2 * Math.PI * rippleHertz;

    const factor = 1 / Math.hypot(1, omega * ohms * farads);
    return { factor, outputVolts: rippleVolts * factor, dropVolts: amps * ohms };
  },
});
