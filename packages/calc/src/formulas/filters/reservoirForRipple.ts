import { defineFormula } from "../defineFormula.ts";

/** Reservoir capacitor for a given ripple: C = I/(fr Vpp). SI base units in and out; FormulaError outside the limits. */
export const reservoirForRipple = defineFormula({
  id: "reservoir-for-ripple",
  area: "filters",
  title: "Reservoir capacitor for a given ripple",
  expression: "C = I/(fr Vpp)",
  inputs: {
    amps: { symbol: "I", dimension: "current", meaning: "direct load current", above: 0 },
    peakToPeakVolts: { symbol: "Vpp", dimension: "voltage", meaning: "ripple allowed, peak to peak", above: 0 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
    pulses: { symbol: "p", dimension: "ratio", meaning: "charging pulses in a cycle", minimum: 1, maximum: 2, whole: true, default: 2 },
  },
  outputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "reservoir capacitor" },
  },
  limits: "As reservoir-ripple. A tube rectifier also has a largest first capacitor.",
  source: "neets-module-6",
  compute: ({ amps, peakToPeakVolts, lineHertz, pulses }) => ({ farads: amps / (pulses * lineHertz * peakToPeakVolts) }),
});
