import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Bleeder divider for one load: R2 = V/IB; R1 = (E - V)/(IB + IL). SI base units in and out; FormulaError outside the limits. */
export const bleederDivider = defineFormula({
  id: "bleeder-divider",
  area: "dc",
  title: "Bleeder divider for one load",
  expression: "R2 = V/IB; R1 = (E - V)/(IB + IL)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "supply voltage" },
    loadVolts: { symbol: "V", dimension: "voltage", meaning: "voltage at the load", above: 0 },
    loadAmps: { symbol: "IL", dimension: "current", meaning: "load current", minimum: 0 },
    bleederAmps: { symbol: "IB", dimension: "current", meaning: "bleeder current", above: 0 },
  },
  outputs: {
    bleederOhms: { symbol: "R2", dimension: "resistance", meaning: "resistor from tap to ground" },
    bleederWatts: { symbol: "P2", dimension: "power", meaning: "heat in it" },
    upperOhms: { symbol: "R1", dimension: "resistance", meaning: "resistor from supply to tap" },
    upperWatts: { symbol: "P1", dimension: "power", meaning: "heat in it" },
  },
  limits: "At the stated load only; without load the tap rises towards E R2/(R1 + R2). The load voltage lies below the supply.",
  source: "neets-module-1",
  compute: ({ supplyVolts, loadVolts, loadAmps, bleederAmps }) => {
    requireThat(loadVolts < supplyVolts, "loadVolts", loadVolts, "must be below supplyVolts");
    const total = loadAmps + bleederAmps;
    return {
      bleederOhms: loadVolts / bleederAmps,
      bleederWatts: loadVolts * bleederAmps,
      upperOhms: (supplyVolts - loadVolts) / total,
      upperWatts: (supplyVolts - loadVolts) * total,
    };
  },
});
