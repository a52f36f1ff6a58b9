import { defineFormula } from "../defineFormula.ts";

/**
 * RMS, average and peak-to-peak of a sine from its peak: Vrms = Vp/sqrt(2); Vavg = 2 Vp/pi (full wave), Vp/pi (half wave).
 * SI base units in and out; FormulaError outside the limits.
 */
export const sineFromPeak = defineFormula({
  id: "sine-from-peak",
  area: "rectifiers",
  title: "RMS, average and peak-to-peak of a sine from its peak",
  expression: "Vrms = Vp/sqrt(2); Vavg = 2 Vp/pi (full wave), Vp/pi (half wave)",
  inputs: {
    peakVolts: { symbol: "Vp", dimension: "voltage", meaning: "peak", minimum: 0 },
  },
  outputs: {
    rmsVolts: { symbol: "Vrms", dimension: "voltage", meaning: "RMS" },
    fullWaveAverageVolts: { symbol: "Vfw", dimension: "voltage", meaning: "average, both halves rectified" },
    halfWaveAverageVolts: { symbol: "Vhw", dimension: "voltage", meaning: "average, one half rectified" },
    peakToPeakVolts: { symbol: "Vpp", dimension: "voltage", meaning: "peak to peak" },
  },
  limits: "Pure sine: a line with flattened tops has a lower peak for its RMS.",
  source: "neets-module-6",
  compute: ({ peakVolts }) => {
    return {
      rmsVolts: peakVolts / Math.SQRT2,
      fullWaveAverageVolts: (2 * peakVolts) / Math.PI,
      halfWaveAverageVolts: peakVolts / Math.PI,
      peakToPeakVolts: 2 * peakVolts,
    };
  },
});
