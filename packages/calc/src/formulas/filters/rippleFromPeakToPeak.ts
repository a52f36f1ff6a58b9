import { defineFormula } from "../defineFormula.ts";

/**
 * Ripple factor from the ripple on an oscilloscope: g = Vpp/(2 sqrt(3) Vdc) sawtooth; Vpp/(2 sqrt(2) Vdc) sine.
 * SI base units in and out; FormulaError outside the limits.
 */
export const rippleFromPeakToPeak = defineFormula({
  id: "ripple-from-peak-to-peak",
  area: "filters",
  title: "Ripple factor from the ripple on an oscilloscope",
  expression: "g = Vpp/(2 sqrt(3) Vdc) sawtooth; Vpp/(2 sqrt(2) Vdc) sine",
  inputs: {
    peakToPeakVolts: { symbol: "Vpp", dimension: "voltage", meaning: "ripple, peak to peak", minimum: 0 },
    averageVolts: { symbol: "Vdc", dimension: "voltage", meaning: "direct voltage", above: 0 },
  },
  outputs: {
    sawtoothFactor: { symbol: "g", dimension: "ratio", meaning: "ripple factor of a sawtooth (first capacitor)" },
    sineFactor: { symbol: "gs", dimension: "ratio", meaning: "ripple factor of a sine (behind a filter section)" },
  },
  limits: "Either shape in its purity; the truth behind a reservoir lies near the sawtooth.",
  source: "circuit-theory",
  compute: ({ peakToPeakVolts, averageVolts }) => ({
    sawtoothFactor: peakToPeakVolts / (2 * Math.sqrt(3) * averageVolts),
    sineFactor: peakToPeakVolts / (2 * Math.SQRT2 * averageVolts),
  }),
});
