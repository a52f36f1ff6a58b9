import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/** Resistors in parallel: 1/R = 1/R1 + 1/R2 + .... SI base units in and out; FormulaError outside the limits. */
export const parallelResistance = defineFormula({
  id: "parallel-resistance",
  area: "dc",
  title: "Resistors in parallel",
  expression: "1/R = 1/R1 + 1/R2 + ...",
  inputs: {
    ohms: {
      symbol: "Rn",
      dimension: "resistance",
      meaning: "each resistor; an open one counts for nothing",
      minimum: 0,
      list: true,
      open: true,
    },
  },
  outputs: {
    totalOhms: { symbol: "R", dimension: "resistance", meaning: "resistance of all together" },
  },
  limits: "At least one resistor that is not open.",
  source: "lessons-dc",
  compute: ({ ohms }) => ({ totalOhms: parallelOf(...ohms) }),
});
