import { defineFormula } from "../defineFormula.ts";

/**
 * Power of an amplitude-modulated carrier: P = Pc (1 + m^2/2); PEP = Pc (1 + m)^2.
 * SI base units in and out; FormulaError outside the limits.
 */
export const modulatedPower = defineFormula({
  id: "modulated-power",
  area: "tubes",
  title: "Power of an amplitude-modulated carrier",
  expression: "P = Pc (1 + m^2/2); PEP = Pc (1 + m)^2",
  inputs: {
    carrierWatts: { symbol: "Pc", dimension: "power", meaning: "carrier", minimum: 0 },
    modulation: { symbol: "m", dimension: "ratio", meaning: "modulation index", minimum: 0, maximum: 1 },
  },
  outputs: {
    totalWatts: { symbol: "P", dimension: "power", meaning: "average power" },
    sidebandWatts: { symbol: "Ps", dimension: "power", meaning: "power in both sidebands" },
    envelopeWatts: { symbol: "PEP", dimension: "power", meaning: "peak envelope power" },
  },
  limits: "Sine modulation, both sidebands.",
  source: "circuit-theory",
  compute: ({ carrierWatts, modulation }) => {
    const sidebandWatts = (carrierWatts * modulation ** 2) / 2;
    return { totalWatts: carrierWatts + sidebandWatts, sidebandWatts, envelopeWatts: carrierWatts * (1 + modulation) ** 2 };
  },
});
