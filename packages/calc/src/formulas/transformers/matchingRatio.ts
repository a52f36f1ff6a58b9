import { defineFormula } from "../defineFormula.ts";

/** Turns ratio that matches two impedances: n = sqrt(Z1/Z2). SI base units in and out; FormulaError outside the limits. */
export const matchingRatio = defineFormula({
  id: "matching-ratio",
  area: "transformers",
  title: "Turns ratio that matches two impedances",
  expression: "n = sqrt(Z1/Z2)",
  inputs: {
    primaryOhms: { symbol: "Z1", dimension: "resistance", meaning: "impedance wanted at the primary", above: 0 },
    secondaryOhms: { symbol: "Z2", dimension: "resistance", meaning: "impedance at the secondary", above: 0 },
  },
  outputs: {
    ratio: { symbol: "n", dimension: "ratio", meaning: "primary turns for each secondary turn" },
  },
  limits: "Within the band of the transformer.",
  source: "lessons-ac",
  compute: ({ primaryOhms, secondaryOhms }) => ({ ratio: Math.sqrt(primaryOhms / secondaryOhms) }),
});
