import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";
import { sumOf } from "../sumOf.ts";

/**
 * Time constant of resistors and capacitors: t = R C, parts of a kind in parallel.
 * SI base units in and out; FormulaError outside the limits.
 */
export const rcTimeConstant = defineFormula({
  id: "rc-time-constant",
  area: "transients",
  title: "Time constant of resistors and capacitors",
  expression: "t = R C, parts of a kind in parallel",
  inputs: {
    ohms: { symbol: "Rn", dimension: "resistance", meaning: "resistors, in parallel where there are several", above: 0, list: true },
    farads: { symbol: "Cn", dimension: "capacitance", meaning: "capacitors, in parallel where there are several", minimum: 0, list: true },
  },
  outputs: {
    seconds: { symbol: "t", dimension: "time", meaning: "time constant" },
  },
  limits: "All of them across the same two points.",
  source: "lessons-dc",
  compute: ({ ohms, farads }) => ({ seconds: parallelOf(...ohms) * sumOf(farads) }),
});
