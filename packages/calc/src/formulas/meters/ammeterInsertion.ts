import { defineFormula } from "../defineFormula.ts";

/** What an ammeter's own resistance does to the current: I' = E/(R + Ra). SI base units in and out; FormulaError outside the limits. */
export const ammeterInsertion = defineFormula({
  id: "ammeter-insertion",
  area: "meters",
  title: "What an ammeter's own resistance does to the current",
  expression: "I' = E/(R + Ra)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "voltage across the branch" },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance of the branch", above: 0 },
    meterOhms: { symbol: "Ra", dimension: "resistance", meaning: "resistance of the meter", minimum: 0 },
  },
  outputs: {
    trueAmps: { symbol: "I", dimension: "current", meaning: "current without the meter" },
    shownAmps: { symbol: "I'", dimension: "current", meaning: "current with the meter" },
    error: { symbol: "e", dimension: "ratio", meaning: "share by which it shows too little" },
  },
  limits: "A source without resistance.",
  source: "lessons-dc",
  compute: ({ supplyVolts, ohms, meterOhms }) => ({
    trueAmps: supplyVolts / ohms,
    shownAmps: supplyVolts / (ohms + meterOhms),
    error: meterOhms / (ohms + meterOhms),
  }),
});
