import { defineFormula } from "../defineFormula.ts";
import { sumOf } from "../sumOf.ts";

/** Inductors in series: L = L1 + L2 + .... SI base units in and out; FormulaError outside the limits. */
export const seriesInductance = defineFormula({
  id: "series-inductance",
  area: "transients",
  title: "Inductors in series",
  expression: "L = L1 + L2 + ...",
  inputs: {
    henries: { symbol: "Ln", dimension: "inductance", meaning: "each inductor", minimum: 0, list: true },
  },
  outputs: {
    totalHenries: { symbol: "L", dimension: "inductance", meaning: "inductance of the chain" },
  },
  limits: "No coupling between them.",
  source: "lessons-dc",
  compute: ({ henries }) => ({ totalHenries: sumOf(henries) }),
});
