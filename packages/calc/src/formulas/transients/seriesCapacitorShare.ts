import { defineFormula } from "../defineFormula.ts";

/** Voltage of two capacitors in series: V1 = E C2/(C1 + C2). SI base units in and out; FormulaError outside the limits. */
export const seriesCapacitorShare = defineFormula({
  id: "series-capacitor-share",
  area: "transients",
  title: "Voltage of two capacitors in series",
  expression: "V1 = E C2/(C1 + C2)",
  inputs: {
    volts: { symbol: "E", dimension: "voltage", meaning: "voltage across both" },
    firstFarads: { symbol: "C1", dimension: "capacitance", meaning: "first capacitor", above: 0 },
    secondFarads: { symbol: "C2", dimension: "capacitance", meaning: "second capacitor", above: 0 },
  },
  outputs: {
    firstVolts: { symbol: "V1", dimension: "voltage", meaning: "voltage of the first" },
    secondVolts: { symbol: "V2", dimension: "voltage", meaning: "voltage of the second" },
  },
  limits: "Alternating voltage, or the first moment; direct voltage ends up shared by leakage or by the resistors across them.",
  source: "circuit-theory",
  compute: ({ volts, firstFarads, secondFarads }) => {
    const total = firstFarads + secondFarads;
    return { firstVolts: (volts * secondFarads) / total, secondVolts: (volts * firstFarads) / total };
  },
});
