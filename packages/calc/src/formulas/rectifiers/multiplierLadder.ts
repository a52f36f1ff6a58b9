import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Voltage multiplier ladder without load: Vdc = 2 n (Vp - Vf); PIV = 2 Vp - Vf.
 * SI base units in and out; FormulaError outside the limits.
 */
export const multiplierLadder = defineFormula({
  id: "multiplier-ladder",
  area: "rectifiers",
  title: "Voltage multiplier ladder without load",
  expression: "Vdc = 2 n (Vp - Vf); PIV = 2 Vp - Vf",
  inputs: {
    peakVolts: { symbol: "Vp", dimension: "voltage", meaning: "peak of the source", above: 0 },
    stages: {
      symbol: "n",
      dimension: "ratio",
      meaning: "doubler stages, of two diodes and two capacitors each",
      minimum: 1,
      maximum: 100,
      whole: true,
    },
    dropVolts: { symbol: "Vf", dimension: "voltage", meaning: "forward drop of each diode", minimum: 0, default: 0 },
  },
  outputs: {
    outputVolts: { symbol: "Vdc", dimension: "voltage", meaning: "direct voltage of the whole ladder" },
    inverseVolts: { symbol: "PIV", dimension: "voltage", meaning: "peak inverse voltage of a diode" },
  },
  limits: "No load: see multiplier-sag for what a load takes. The drop must lie below the peak.",
  source: "doubler-lessons",
  compute: ({ peakVolts, stages, dropVolts }) => {
    requireThat(dropVolts < peakVolts, "dropVolts", dropVolts, "must be below peakVolts");
    return { outputVolts: 2 * stages * (peakVolts - dropVolts), inverseVolts: 2 * peakVolts - dropVolts };
  },
});
