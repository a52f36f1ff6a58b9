import { defineFormula } from "../defineFormula.ts";

/**
 * Power and efficiency of a source into a load: P = E^2 RL/(Rs + RL)^2; eta = RL/(Rs + RL).
 * SI base units in and out; FormulaError outside the limits.
 */
export const sourceIntoLoad = defineFormula({
  id: "source-into-load",
  area: "dc",
  title: "Power and efficiency of a source into a load",
  expression: "P = E^2 RL/(Rs + RL)^2; eta = RL/(Rs + RL)",
  inputs: {
    openVolts: { symbol: "E", dimension: "voltage", meaning: "voltage of the source without load" },
    sourceOhms: { symbol: "Rs", dimension: "resistance", meaning: "its resistance", minimum: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
  },
  outputs: {
    watts: { symbol: "P", dimension: "power", meaning: "power in the load" },
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage across the load" },
    efficiency: { symbol: "eta", dimension: "ratio", meaning: "share of the power that reaches the load" },
  },
  limits: "Resistive source and load.",
  source: "circuit-theory",
  compute: ({ openVolts, sourceOhms, loadOhms }) => {
    const total = sourceOhms + loadOhms;
    return { watts: (openVolts ** 2 * loadOhms) / total ** 2, volts: (openVolts * loadOhms) / total, efficiency: loadOhms / total };
  },
});
