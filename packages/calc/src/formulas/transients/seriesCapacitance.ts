import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/** Capacitors in series: 1/C = 1/C1 + 1/C2 + .... SI base units in and out; FormulaError outside the limits. */
export const seriesCapacitance = defineFormula({
  id: "series-capacitance",
  area: "transients",
  title: "Capacitors in series",
  expression: "1/C = 1/C1 + 1/C2 + ...",
  inputs: {
    farads: { symbol: "Cn", dimension: "capacitance", meaning: "each capacitor", above: 0, list: true },
  },
  outputs: {
    totalFarads: { symbol: "C", dimension: "capacitance", meaning: "capacitance of the chain" },
  },
  limits: "No leakage, which decides how direct voltage is shared.",
  source: "lessons-dc",
  compute: ({ farads }) => ({ totalFarads: parallelOf(...farads) }),
});
