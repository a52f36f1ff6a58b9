import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/** Inductors in parallel: 1/L = 1/L1 + 1/L2 + .... SI base units in and out; FormulaError outside the limits. */
export const parallelInductance = defineFormula({
  id: "parallel-inductance",
  area: "transients",
  title: "Inductors in parallel",
  expression: "1/L = 1/L1 + 1/L2 + ...",
  inputs: {
    henries: { symbol: "Ln", dimension: "inductance", meaning: "each inductor", above: 0, list: true },
  },
  outputs: {
    totalHenries: { symbol: "L", dimension: "inductance", meaning: "inductance of all together" },
  },
  limits: "No coupling between them.",
  source: "lessons-dc",
  compute: ({ henries }) => ({ totalHenries: parallelOf(...henries) }),
});
