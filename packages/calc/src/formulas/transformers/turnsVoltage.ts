import { defineFormula } from "../defineFormula.ts";

/** Secondary voltage from the turns: V2 = V1 N2/N1. SI base units in and out; FormulaError outside the limits. */
export const turnsVoltage = defineFormula({
  id: "turns-voltage",
  area: "transformers",
  title: "Secondary voltage from the turns",
  expression: "V2 = V1 N2/N1",
  inputs: {
    primaryVolts: { symbol: "V1", dimension: "voltage", meaning: "primary voltage", minimum: 0 },
    primaryTurns: { symbol: "N1", dimension: "ratio", meaning: "primary turns", above: 0 },
    secondaryTurns: { symbol: "N2", dimension: "ratio", meaning: "secondary turns", above: 0 },
  },
  outputs: {
    secondaryVolts: { symbol: "V2", dimension: "voltage", meaning: "secondary voltage without load" },
    ratio: { symbol: "N1/N2", dimension: "ratio", meaning: "primary turns for each secondary turn" },
  },
  limits: "No load; a loaded winding gives some percent less.",
  source: "lessons-ac",
  compute: ({ primaryVolts, primaryTurns, secondaryTurns }) => ({
    secondaryVolts: (primaryVolts * secondaryTurns) / primaryTurns,
    ratio: primaryTurns / secondaryTurns,
  }),
});
