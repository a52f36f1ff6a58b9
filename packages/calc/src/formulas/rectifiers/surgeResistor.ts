import { defineFormula } from "../defineFormula.ts";

/**
 * Resistor that limits the first charging surge: R = sqrt(2) Vrms/Isurge - Rs.
 * SI base units in and out; FormulaError outside the limits.
 */
export const surgeResistor = defineFormula({
  id: "surge-resistor",
  area: "rectifiers",
  title: "Resistor that limits the first charging surge",
  expression: "R = sqrt(2) Vrms/Isurge - Rs",
  inputs: {
    rmsVolts: { symbol: "Vrms", dimension: "voltage", meaning: "RMS of the winding at the highest line", above: 0 },
    surgeAmps: { symbol: "Isurge", dimension: "current", meaning: "surge rating of the rectifier, single pulse", above: 0 },
    sourceOhms: { symbol: "Rs", dimension: "resistance", meaning: "resistance that is there already", minimum: 0, default: 0 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance to add; 0 when there is enough" },
  },
  limits: "Capacitor empty, switched on at the crest: the worst case.",
  source: "silicon-diode-sheets",
  compute: ({ rmsVolts, surgeAmps, sourceOhms }) => ({ ohms: Math.max(0, (Math.SQRT2 * rmsVolts) / surgeAmps - sourceOhms) }),
});
