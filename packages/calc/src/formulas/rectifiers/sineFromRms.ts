import { defineFormula } from "../defineFormula.ts";

/**
 * Peak, average and peak-to-peak of a sine from its RMS: Vp = sqrt(2) Vrms; Vavg = 2 sqrt(2) Vrms/pi.
 * SI base units in and out; FormulaError outside the limits.
 */
export const sineFromRms = defineFormula({
  id: "sine-from-rms",
  area: "rectifiers",
  title: "Peak, average and peak-to-peak of a sine from its RMS",
  expression: "Vp = sqrt(2) Vrms; Vavg = 2 sqrt(2) Vrms/pi",
  inputs: {
    rmsVolts: { symbol: "Vrms", dimension: "voltage", meaning: "RMS", minimum: 0 },
  },
  outputs: {
    peakVolts: { symbol: "Vp", dimension: "voltage", meaning: "peak" },
    fullWaveAverageVolts: { symbol: "Vfw", dimension: "voltage", meaning: "average, both halves rectified" },
    halfWaveAverageVolts: { symbol: "Vhw", dimension: "voltage", meaning: "average, one half rectified" },
    peakToPeakVolts: { symbol: "Vpp", dimension: "voltage", meaning: "peak to peak" },
  },
  limits: "Pure sine.",
  source: "neets-module-6",
  compute: ({ rmsVolts }) => {
    const peakVolts = Math.SQRT2 * rmsVolts;
    return {
      peakVolts,
      fullWaveAverageVolts: (2 * peakVolts) / Math.PI,
      halfWaveAverageVolts: peakVolts / Math.PI,
      peakToPeakVolts: 2 * peakVolts,
    };
  },
});
