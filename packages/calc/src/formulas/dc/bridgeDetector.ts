import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/**
 * Current in the detector of an unbalanced bridge: I = (Va - Vb)/(RA||RB + RC||RD + Rm).
 * SI base units in and out; FormulaError outside the limits.
 */
export const bridgeDetector = defineFormula({
  id: "bridge-detector",
  area: "dc",
  title: "Current in the detector of an unbalanced bridge",
  expression: "I = (Va - Vb)/(RA||RB + RC||RD + Rm)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "voltage across the bridge" },
    firstUpperOhms: { symbol: "RA", dimension: "resistance", meaning: "first arm pair, supply side", above: 0 },
    firstLowerOhms: { symbol: "RB", dimension: "resistance", meaning: "first arm pair, ground side", above: 0 },
    secondUpperOhms: { symbol: "RC", dimension: "resistance", meaning: "second arm pair, supply side", above: 0 },
    secondLowerOhms: { symbol: "RD", dimension: "resistance", meaning: "second arm pair, ground side", above: 0 },
    detectorOhms: { symbol: "Rm", dimension: "resistance", meaning: "resistance of the detector between the two taps", minimum: 0 },
  },
  outputs: {
    detectorAmps: { symbol: "I", dimension: "current", meaning: "current from the first tap to the second" },
    openVolts: { symbol: "Va-Vb", dimension: "voltage", meaning: "voltage between the taps with the detector away" },
  },
  limits: "Direct current, a source without resistance.",
  source: "lessons-dc",
  compute: ({ supplyVolts, firstUpperOhms, firstLowerOhms, secondUpperOhms, secondLowerOhms, detectorOhms }) => {
    const openVolts =
      supplyVolts * (firstLowerOhms / (firstUpperOhms + firstLowerOhms) - secondLowerOhms / (secondUpperOhms + secondLowerOhms));
    const source = parallelOf(firstUpperOhms, firstLowerOhms) + parallelOf(secondUpperOhms, secondLowerOhms);
    return { openVolts, detectorAmps: openVolts / (source + detectorOhms) };
  },
});
