import { defineFormula } from "../defineFormula.ts";

/** Winding voltage at another line voltage: V' = V E'/E. SI base units in and out; FormulaError outside the limits. */
export const voltageAtLine = defineFormula({
  id: "voltage-at-line",
  area: "transformers",
  title: "Winding voltage at another line voltage",
  expression: "V' = V E'/E",
  inputs: {
    windingVolts: { symbol: "V", dimension: "voltage", meaning: "voltage at the design line", minimum: 0 },
    designLineVolts: { symbol: "E", dimension: "voltage", meaning: "line voltage that it was wound for", above: 0 },
    lineVolts: { symbol: "E'", dimension: "voltage", meaning: "line voltage there is", minimum: 0 },
  },
  outputs: {
    volts: { symbol: "V'", dimension: "voltage", meaning: "voltage now" },
    change: { symbol: "d", dimension: "ratio", meaning: "change as a share" },
  },
  limits: "Same load in proportion; B+ follows, plate dissipation goes roughly with the square.",
  source: "circuit-theory",
  compute: ({ windingVolts, designLineVolts, lineVolts }) => ({
    volts: (windingVolts * lineVolts) / designLineVolts,
    change: lineVolts / designLineVolts - 1,
  }),
});
