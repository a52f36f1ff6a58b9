import { defineFormula } from "../defineFormula.ts";

/** Gain from the swing of the plate current: A = dI RL/dVg. SI base units in and out; FormulaError outside the limits. */
export const gainFromSwing = defineFormula({
  id: "gain-from-swing",
  area: "tubes",
  title: "Gain from the swing of the plate current",
  expression: "A = dI RL/dVg",
  inputs: {
    plateSwingAmps: { symbol: "dI", dimension: "current", meaning: "change of plate current", minimum: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
    gridSwingVolts: { symbol: "dVg", dimension: "voltage", meaning: "change of grid voltage", above: 0 },
  },
  outputs: {
    gain: { symbol: "A", dimension: "ratio", meaning: "voltage gain, the phase turned" },
  },
  limits: "Swing measured with the load in place.",
  source: "neets-module-6",
  compute: ({ plateSwingAmps, loadOhms, gridSwingVolts }) => ({ gain: (plateSwingAmps * loadOhms) / gridSwingVolts }),
});
