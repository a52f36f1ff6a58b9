import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Bleeder that completes a divider whose dropping resistor is given: IB = (E - V)/R1 - IL; R2 = V/IB.
 * SI base units in and out; FormulaError outside the limits.
 */
export const bleederBehindDropper = defineFormula({
  id: "bleeder-behind-dropper",
  area: "dc",
  title: "Bleeder that completes a divider whose dropping resistor is given",
  expression: "IB = (E - V)/R1 - IL; R2 = V/IB",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "supply voltage" },
    loadVolts: { symbol: "V", dimension: "voltage", meaning: "voltage at the load", above: 0 },
    loadAmps: { symbol: "IL", dimension: "current", meaning: "load current", minimum: 0 },
    dropperOhms: { symbol: "R1", dimension: "resistance", meaning: "dropping resistor that is there", above: 0 },
  },
  outputs: {
    bleederAmps: { symbol: "IB", dimension: "current", meaning: "bleeder current" },
    bleederOhms: { symbol: "R2", dimension: "resistance", meaning: "bleeder" },
    bleederWatts: { symbol: "P2", dimension: "power", meaning: "heat in it" },
  },
  limits: "The dropping resistor must pass more than the load takes.",
  source: "course-e1100",
  compute: ({ supplyVolts, loadVolts, loadAmps, dropperOhms }) => {
    const bleederAmps = (supplyVolts - loadVolts) / dropperOhms - loadAmps;
    requireThat(bleederAmps > 0, "loadAmps", loadAmps, "must be less than the dropping resistor passes");
    return { bleederAmps, bleederOhms: loadVolts / bleederAmps, bleederWatts: loadVolts * bleederAmps };
  },
});
