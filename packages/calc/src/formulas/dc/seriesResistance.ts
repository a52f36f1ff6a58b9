import { defineFormula } from "../defineFormula.ts";
import { sumOf } from "../sumOf.ts";

/** Resistors in series: R = R1 + R2 + .... SI base units in and out; FormulaError outside the limits. */
export const seriesResistance = defineFormula({
  id: "series-resistance",
  area: "dc",
  title: "Resistors in series",
  expression: "R = R1 + R2 + ...",
  inputs: {
    ohms: { symbol: "Rn", dimension: "resistance", meaning: "each resistor", minimum: 0, list: true },
  },
  outputs: {
    totalOhms: { symbol: "R", dimension: "resistance", meaning: "resistance of the chain" },
  },
  limits: "Any number of resistors; an open one is refused, for the chain is open then.",
  source: "lessons-dc",
  compute: ({ ohms }) => ({ totalOhms: sumOf(ohms) }),
});
