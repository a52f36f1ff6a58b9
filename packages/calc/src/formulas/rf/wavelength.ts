import { defineFormula } from "../defineFormula.ts";

/** Wavelength on a line: l = v c/f. SI base units in and out; FormulaError outside the limits. */
export const wavelength = defineFormula({
  id: "wavelength",
  area: "rf",
  title: "Wavelength on a line",
  expression: "l = v c/f",
  inputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency", above: 0 },
    velocityFactor: { symbol: "v", dimension: "ratio", meaning: "velocity factor", above: 0, maximum: 1, default: 1 },
  },
  outputs: {
    meters: { symbol: "l", dimension: "length", meaning: "wavelength" },
    quarterMeters: { symbol: "l/4", dimension: "length", meaning: "a quarter of it" },
  },
  limits: "c = 299 792 458 m/s.",
  source: "circuit-theory",
  compute: ({ hertz, velocityFactor }) => {
    const meters = (velocityFactor * 299_792_458) / hertz;
    return { meters, quarterMeters: meters / 4 };
  },
});
