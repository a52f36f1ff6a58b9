import { defineFormula } from "../defineFormula.ts";

/** Voltage that a gas regulator tube gets to start on: Vs = E RL/(Rs + RL). SI base units in and out; FormulaError outside the limits. */
export const gasTubeStart = defineFormula({
  id: "gas-tube-start",
  area: "regulators",
  title: "Voltage that a gas regulator tube gets to start on",
  expression: "Vs = E RL/(Rs + RL)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "lowest supply voltage", above: 0 },
    seriesOhms: { symbol: "Rs", dimension: "resistance", meaning: "series resistor", above: 0 },
    loadOhms: {
      symbol: "RL",
      dimension: "resistance",
      meaning: "load while the tube is dark",
      above: 0,
      open: true,
      default: Number.POSITIVE_INFINITY,
    },
    strikeVolts: { symbol: "Vst", dimension: "voltage", meaning: "starting voltage of the tube", above: 0 },
  },
  outputs: {
    availableVolts: { symbol: "Vs", dimension: "voltage", meaning: "voltage across the dark tube" },
    marginVolts: { symbol: "dV", dimension: "voltage", meaning: "what it exceeds the starting voltage by; negative: the tube stays dark" },
  },
  limits: "Load that draws current while the tube is dark: cold heaters draw none, which helps.",
  source: "circuit-theory",
  compute: ({ supplyVolts, seriesOhms, loadOhms, strikeVolts }) => {
    const availableVolts = loadOhms === Number.POSITIVE_INFINITY ? supplyVolts : (supplyVolts * loadOhms) / (seriesOhms + loadOhms);
    return { availableVolts, marginVolts: availableVolts - strikeVolts };
  },
});
