import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Grid voltage from a leaky coupling capacitor: dV = E Rg/(RL + Rg). SI base units in and out; FormulaError outside the limits. */
export const couplingLeakage = defineFormula({
  id: "coupling-leakage",
  area: "tubes",
  title: "Grid voltage from a leaky coupling capacitor",
  expression: "dV = E Rg/(RL + Rg)",
  inputs: {
    sourceVolts: { symbol: "E", dimension: "voltage", meaning: "voltage at the plate side", above: 0 },
    gridOhms: { symbol: "Rg", dimension: "resistance", meaning: "grid resistor", above: 0 },
    leakOhms: { symbol: "RL", dimension: "resistance", meaning: "insulation resistance of the capacitor", minimum: 0, open: true },
    allowedVolts: { symbol: "dV0", dimension: "voltage", meaning: "rise that is allowed", above: 0, default: 0.1 },
  },
  outputs: {
    riseVolts: { symbol: "dV", dimension: "voltage", meaning: "voltage at the grid" },
    leastLeakOhms: { symbol: "R0", dimension: "resistance", meaning: "least insulation for the rise allowed" },
  },
  limits: "Grid draws no current itself. The rise allowed lies below the source.",
  source: "circuit-theory",
  compute: ({ sourceVolts, gridOhms, leakOhms, allowedVolts }) => {
    requireThat(allowedVolts < sourceVolts, "allowedVolts", allowedVolts, "must be below sourceVolts");
    return { riseVolts: (sourceVolts * gridOhms) / (leakOhms + gridOhms), leastLeakOhms: gridOhms * (sourceVolts / allowedVolts - 1) };
  },
});
