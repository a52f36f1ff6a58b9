import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Source resistance from two loads: Rs = (V1 - V2)/(I2 - I1). SI base units in and out; FormulaError outside the limits. */
export const sourceResistance = defineFormula({
  id: "source-resistance",
  area: "dc",
  title: "Source resistance from two loads",
  expression: "Rs = (V1 - V2)/(I2 - I1)",
  inputs: {
    lightVolts: { symbol: "V1", dimension: "voltage", meaning: "voltage at the lighter load" },
    lightAmps: { symbol: "I1", dimension: "current", meaning: "lighter load current", minimum: 0, default: 0 },
    heavyVolts: { symbol: "V2", dimension: "voltage", meaning: "voltage at the heavier load" },
    heavyAmps: { symbol: "I2", dimension: "current", meaning: "heavier load current", above: 0 },
  },
  outputs: {
    ohms: { symbol: "Rs", dimension: "resistance", meaning: "resistance of the source between the two loads" },
  },
  limits: "A source that is linear between both loads: a capacitor-input supply is so only roughly.",
  source: "circuit-theory",
  compute: ({ lightVolts, lightAmps, heavyVolts, heavyAmps }) => {
    requireThat(heavyAmps > lightAmps, "heavyAmps", heavyAmps, "must be above lightAmps");
    requireThat(heavyVolts <= lightVolts, "heavyVolts", heavyVolts, "must not be above lightVolts");
    return { ohms: (lightVolts - heavyVolts) / (heavyAmps - lightAmps) };
  },
});
