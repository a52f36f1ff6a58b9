import { defineFormula } from "../defineFormula.ts";

/** Voltage regulation: reg = (V0 - V1)/V1. SI base units in and out; FormulaError outside the limits. */
export const regulation = defineFormula({
  id: "regulation",
  area: "rectifiers",
  title: "Voltage regulation",
  expression: "reg = (V0 - V1)/V1",
  inputs: {
    noLoadVolts: { symbol: "V0", dimension: "voltage", meaning: "voltage without load" },
    fullLoadVolts: { symbol: "V1", dimension: "voltage", meaning: "voltage at full load", above: 0 },
  },
  outputs: {
    regulation: { symbol: "reg", dimension: "ratio", meaning: "change as a share of the full-load voltage" },
  },
  limits: "Divided by the full-load voltage, as the handbooks do; some pages divide by the other one.",
  source: "neets-module-6",
  compute: ({ noLoadVolts, fullLoadVolts }) => ({ regulation: (noLoadVolts - fullLoadVolts) / fullLoadVolts }),
});
