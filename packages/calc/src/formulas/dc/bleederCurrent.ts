import { defineFormula } from "../defineFormula.ts";
import { sumOf } from "../sumOf.ts";

/** Bleeder current by the share of the load current: IB = k (I1 + I2 + ...). SI base units in and out; FormulaError outside the limits. */
export const bleederCurrent = defineFormula({
  id: "bleeder-current",
  area: "dc",
  title: "Bleeder current by the share of the load current",
  expression: "IB = k (I1 + I2 + ...)",
  inputs: {
    loadAmps: { symbol: "In", dimension: "current", meaning: "each load current", minimum: 0, list: true },
    share: {
      symbol: "k",
      dimension: "ratio",
      meaning: "share of the total; 10 % is the handbook rule",
      above: 0,
      maximum: 1,
      default: 0.1,
    },
  },
  outputs: {
    bleederAmps: { symbol: "IB", dimension: "current", meaning: "bleeder current" },
  },
  limits: "A rule of thumb, not a law: more bleeder steadies the taps and wastes more power.",
  source: "neets-module-1",
  compute: ({ loadAmps, share }) => ({ bleederAmps: share * sumOf(loadAmps) }),
});
