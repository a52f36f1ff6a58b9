import { defineFormula } from "../defineFormula.ts";

/** Impedance that a transformer reflects: Zp = n^2 Zs. SI base units in and out; FormulaError outside the limits. */
export const reflectedImpedance = defineFormula({
  id: "reflected-impedance",
  area: "transformers",
  title: "Impedance that a transformer reflects",
  expression: "Zp = n^2 Zs",
  inputs: {
    secondaryOhms: { symbol: "Zs", dimension: "resistance", meaning: "load at the secondary", minimum: 0 },
    ratio: { symbol: "n", dimension: "ratio", meaning: "primary turns (or volts) for each of the secondary", above: 0 },
  },
  outputs: {
    primaryOhms: { symbol: "Zp", dimension: "resistance", meaning: "impedance at the primary" },
  },
  limits: "Winding resistances left out.",
  source: "lessons-ac",
  compute: ({ secondaryOhms, ratio }) => ({ primaryOhms: ratio ** 2 * secondaryOhms }),
});
