import { defineFormula } from "../defineFormula.ts";

/** Diodes in series for an inverse voltage: N = ceil(m PIV/VRRM). SI base units in and out; FormulaError outside the limits. */
export const diodeString = defineFormula({
  id: "diode-string",
  area: "rectifiers",
  title: "Diodes in series for an inverse voltage",
  expression: "N = ceil(m PIV/VRRM)",
  inputs: {
    inverseVolts: { symbol: "PIV", dimension: "voltage", meaning: "peak inverse voltage of the circuit", above: 0 },
    diodeVolts: { symbol: "VRRM", dimension: "voltage", meaning: "repetitive reverse rating of one diode", above: 0 },
    margin: { symbol: "m", dimension: "ratio", meaning: "margin for transients", minimum: 1, maximum: 10, default: 2 },
  },
  outputs: {
    count: { symbol: "N", dimension: "ratio", meaning: "diodes in the string" },
    shareVolts: { symbol: "Vn", dimension: "voltage", meaning: "peak inverse voltage of each, shared evenly" },
  },
  limits: "Even sharing: equal diodes, or equalizing resistors and capacitors.",
  source: "common-practice",
  compute: ({ inverseVolts, diodeVolts, margin }) => {
    const count = Math.ceil((margin * inverseVolts) / diodeVolts - 1e-9);
    return { count, shareVolts: inverseVolts / count };
  },
});
