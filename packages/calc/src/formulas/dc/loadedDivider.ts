import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/**
 * Voltage divider with a load resistor at the tap: V = E (R2||RL)/(R1 + R2||RL).
 * SI base units in and out; FormulaError outside the limits.
 */
export const loadedDivider = defineFormula({
  id: "loaded-divider",
  area: "dc",
  title: "Voltage divider with a load resistor at the tap",
  expression: "V = E (R2||RL)/(R1 + R2||RL)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "supply voltage" },
    upperOhms: { symbol: "R1", dimension: "resistance", meaning: "resistor from supply to tap", above: 0 },
    lowerOhms: { symbol: "R2", dimension: "resistance", meaning: "resistor from tap to ground", above: 0, open: true },
    loadOhms: {
      symbol: "RL",
      dimension: "resistance",
      meaning: "load from tap to ground",
      minimum: 0,
      open: true,
      default: Number.POSITIVE_INFINITY,
    },
  },
  outputs: {
    tapVolts: { symbol: "V", dimension: "voltage", meaning: "voltage at the tap" },
    sourceOhms: { symbol: "Rs", dimension: "resistance", meaning: "resistance that the load sees, R1||R2" },
    upperWatts: { symbol: "P1", dimension: "power", meaning: "heat in the upper resistor" },
    lowerWatts: { symbol: "P2", dimension: "power", meaning: "heat in the lower resistor" },
  },
  limits: "A source without resistance of its own, a load that obeys Ohm's law.",
  source: "neets-module-1",
  compute: ({ supplyVolts, upperOhms, lowerOhms, loadOhms }) => {
    const foot = parallelOf(lowerOhms, loadOhms);
    const tapVolts = foot === Number.POSITIVE_INFINITY ? supplyVolts : (supplyVolts * foot) / (upperOhms + foot);
    return {
      tapVolts,
      sourceOhms: parallelOf(upperOhms, lowerOhms),
      upperWatts: (supplyVolts - tapVolts) ** 2 / upperOhms,
      lowerWatts: tapVolts ** 2 / lowerOhms,
    };
  },
});
