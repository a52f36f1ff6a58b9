import { defineFormula } from "../defineFormula.ts";

/** Share of a change after so many time constants: s = 1 - exp(-n). SI base units in and out; FormulaError outside the limits. */
export const timeConstantsPassed = defineFormula({
  id: "time-constants-passed",
  area: "transients",
  title: "Share of a change after so many time constants",
  expression: "s = 1 - exp(-n)",
  inputs: {
    count: { symbol: "n", dimension: "ratio", meaning: "time constants that have passed", minimum: 0 },
  },
  outputs: {
    done: { symbol: "s", dimension: "ratio", meaning: "share of the change that is done" },
    left: { symbol: "r", dimension: "ratio", meaning: "share that is left" },
  },
  limits: "One resistance and one storing part.",
  source: "lessons-dc",
  compute: ({ count }) => ({ done: -Math.expm1(-count), left: Math.exp(-count) }),
});
