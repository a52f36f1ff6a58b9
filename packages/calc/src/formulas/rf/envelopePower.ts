import { defineFormula } from "../defineFormula.ts";

/**
 * Peak envelope power from peak-to-peak voltage: PEP = (Vpp/(2 sqrt(2)))^2/R.
 * SI base units in and out; FormulaError outside the limits.
 */
export const envelopePower = defineFormula({
  id: "envelope-power",
  area: "rf",
  title: "Peak envelope power from peak-to-peak voltage",
  expression: "PEP = (Vpp/(2 sqrt(2)))^2/R",
  inputs: {
    peakToPeakVolts: { symbol: "Vpp", dimension: "voltage", meaning: "peak to peak at the crest of the envelope", minimum: 0 },
    ohms: { symbol: "R", dimension: "resistance", meaning: "load", above: 0 },
  },
  outputs: {
    watts: { symbol: "PEP", dimension: "power", meaning: "peak envelope power" },
  },
  limits: "Sine carrier, resistive load.",
  source: "fcc-general-pool",
  compute: ({ peakToPeakVolts, ohms }) => ({ watts: peakToPeakVolts ** 2 / (8 * ohms) }),
});
