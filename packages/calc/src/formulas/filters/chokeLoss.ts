import { defineFormula } from "../defineFormula.ts";

/** Voltage and power that a choke takes: V = I R; P = I^2 R; V' = E - I R. SI base units in and out; FormulaError outside the limits. */
export const chokeLoss = defineFormula({
  id: "choke-loss",
  area: "filters",
  title: "Voltage and power that a choke takes",
  expression: "V = I R; P = I^2 R; V' = E - I R",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "direct voltage before the choke" },
    amps: { symbol: "I", dimension: "current", meaning: "direct current", minimum: 0 },
    chokeOhms: { symbol: "R", dimension: "resistance", meaning: "its resistance", minimum: 0 },
  },
  outputs: {
    dropVolts: { symbol: "V", dimension: "voltage", meaning: "drop" },
    watts: { symbol: "P", dimension: "power", meaning: "heat" },
    outputVolts: { symbol: "V'", dimension: "voltage", meaning: "direct voltage behind the choke" },
  },
  limits: "Direct current only; the ripple current adds heat.",
  source: "lessons-dc",
  compute: ({ supplyVolts, amps, chokeOhms }) => ({
    dropVolts: amps * chokeOhms,
    watts: amps ** 2 * chokeOhms,
    outputVolts: supplyVolts - amps * chokeOhms,
  }),
});
