import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";
import { sumOf } from "../sumOf.ts";

/** Voltage divider without load: V = E R2/(R1 + R2). SI base units in and out; FormulaError outside the limits. */
export const unloadedDivider = defineFormula({
  id: "unloaded-divider",
  area: "dc",
  title: "Voltage divider without load",
  expression: "V = E R2/(R1 + R2)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "voltage across the whole divider" },
    upperOhms: { symbol: "R1", dimension: "resistance", meaning: "resistors above the tap, in series", minimum: 0, list: true },
    lowerOhms: {
      symbol: "R2",
      dimension: "resistance",
      meaning: "resistors from the tap down, in series",
      minimum: 0,
      list: true,
      open: true,
    },
  },
  outputs: {
    tapVolts: { symbol: "V", dimension: "voltage", meaning: "voltage at the tap" },
    amps: { symbol: "I", dimension: "current", meaning: "current through the divider" },
  },
  limits: "Nothing draws current from the tap: a meter does (see voltmeter-loading).",
  source: "neets-module-1",
  compute: ({ supplyVolts, upperOhms, lowerOhms }) => {
    const [upper, lower] = [sumOf(upperOhms), sumOf(lowerOhms)];
    requireThat(upper + lower > 0, "lowerOhms", lower, "must add up to more than 0 ohm with upperOhms");
    if (lower === Number.POSITIVE_INFINITY) return { tapVolts: supplyVolts, amps: 0 };
    return { tapVolts: (supplyVolts * lower) / (upper + lower), amps: supplyVolts / (upper + lower) };
  },
});
