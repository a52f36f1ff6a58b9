import { defineFormula } from "../defineFormula.ts";
import { sumOf } from "../sumOf.ts";

/** Capacitors in parallel: C = C1 + C2 + .... SI base units in and out; FormulaError outside the limits. */
export const parallelCapacitance = defineFormula({
  id: "parallel-capacitance",
  area: "transients",
  title: "Capacitors in parallel",
  expression: "C = C1 + C2 + ...",
  inputs: {
    farads: { symbol: "Cn", dimension: "capacitance", meaning: "each capacitor", minimum: 0, list: true },
  },
  outputs: {
    totalFarads: { symbol: "C", dimension: "capacitance", meaning: "capacitance of all together" },
  },
  limits: "Any number.",
  source: "lessons-dc",
  compute: ({ farads }) => ({ totalFarads: sumOf(farads) }),
});
