import { defineFormula } from "../defineFormula.ts";

/**
 * Cold resistance and energy of an inrush limiter: Vp = sqrt(2) m Vrms; R = Vp/I; W = C Vp^2/2.
 * SI base units in and out; FormulaError outside the limits.
 */
export const inrushLimiter = defineFormula({
  id: "inrush-limiter",
  area: "protection",
  title: "Cold resistance and energy of an inrush limiter",
  expression: "Vp = sqrt(2) m Vrms; R = Vp/I; W = C Vp^2/2",
  inputs: {
    rmsVolts: { symbol: "Vrms", dimension: "voltage", meaning: "nominal voltage, RMS", above: 0 },
    margin: { symbol: "m", dimension: "ratio", meaning: "highest line as a multiple of the nominal", minimum: 1, maximum: 1.5, default: 1 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance to charge", minimum: 0 },
    surgeAmps: { symbol: "I", dimension: "current", meaning: "surge allowed", above: 0 },
  },
  outputs: {
    peakVolts: { symbol: "Vp", dimension: "voltage", meaning: "peak voltage" },
    leastOhms: { symbol: "R", dimension: "resistance", meaning: "least cold resistance" },
    joules: { symbol: "W", dimension: "energy", meaning: "energy the limiter must take" },
  },
  limits: "Capacitor empty, limiter cold. A hot limiter limits nothing: it needs up to two minutes to cool.",
  source: "inrush-limiter-sheets",
  compute: ({ rmsVolts, margin, farads, surgeAmps }) => {
    const peakVolts = Math.SQRT2 * margin * rmsVolts;
    return { peakVolts, leastOhms: peakVolts / surgeAmps, joules: (farads * peakVolts ** 2) / 2 };
  },
});
