import { defineFormula } from "../defineFormula.ts";

/**
 * Output power of a class A triode into a load: P = (mu Vg)^2 RL/(2 (rp + RL)^2).
 * SI base units in and out; FormulaError outside the limits.
 */
export const triodePower = defineFormula({
  id: "triode-power",
  area: "tubes",
  title: "Output power of a class A triode into a load",
  expression: "P = (mu Vg)^2 RL/(2 (rp + RL)^2)",
  inputs: {
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor", above: 0 },
    gridPeakVolts: { symbol: "Vg", dimension: "voltage", meaning: "peak grid signal", minimum: 0 },
    plateOhms: { symbol: "rp", dimension: "resistance", meaning: "plate resistance", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load at the plate", above: 0 },
  },
  outputs: {
    watts: { symbol: "P", dimension: "power", meaning: "output power" },
    match: { symbol: "RL/rp", dimension: "ratio", meaning: "load for each ohm of plate resistance" },
  },
  limits: "Small signals: most power at RL = rp, most undistorted power near twice that.",
  source: "circuit-theory",
  compute: ({ amplificationFactor, gridPeakVolts, plateOhms, loadOhms }) => ({
    watts: ((amplificationFactor * gridPeakVolts) ** 2 * loadOhms) / (2 * (plateOhms + loadOhms) ** 2),
    match: loadOhms / plateOhms,
  }),
});
