import { defineFormula } from "../defineFormula.ts";

/** Bias of a transmitting stage: Vg = -(Vf + Ig Rg + Ik Rk). SI base units in and out; FormulaError outside the limits. */
export const gridLeakBias = defineFormula({
  id: "grid-leak-bias",
  area: "tubes",
  title: "Bias of a transmitting stage",
  expression: "Vg = -(Vf + Ig Rg + Ik Rk)",
  inputs: {
    fixedVolts: { symbol: "Vf", dimension: "voltage", meaning: "fixed bias, as a positive number", minimum: 0, default: 0 },
    gridAmps: { symbol: "Ig", dimension: "current", meaning: "grid current", minimum: 0 },
    gridOhms: { symbol: "Rg", dimension: "resistance", meaning: "grid leak", minimum: 0 },
    cathodeAmps: { symbol: "Ik", dimension: "current", meaning: "cathode current", minimum: 0, default: 0 },
    cathodeOhms: { symbol: "Rk", dimension: "resistance", meaning: "cathode resistor", minimum: 0, default: 0 },
  },
  outputs: {
    gridVolts: { symbol: "Vg", dimension: "voltage", meaning: "grid to cathode, average" },
    leakWatts: { symbol: "P", dimension: "power", meaning: "heat in the grid leak" },
  },
  limits: "Drive steady. Grid-leak bias vanishes with the drive, and the plate current then has nothing to hold it.",
  source: "circuit-theory",
  compute: ({ fixedVolts, gridAmps, gridOhms, cathodeAmps, cathodeOhms }) => ({
    gridVolts: -(fixedVolts + gridAmps * gridOhms + cathodeAmps * cathodeOhms),
    leakWatts: gridAmps ** 2 * gridOhms,
  }),
});
