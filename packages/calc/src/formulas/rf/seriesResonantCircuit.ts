import { defineFormula } from "../defineFormula.ts";

/** Series-resonant circuit at resonance: I = E/R; Q = X/R; VL = Q E. SI base units in and out; FormulaError outside the limits. */
export const seriesResonantCircuit = defineFormula({
  id: "series-resonant-circuit",
  area: "rf",
  title: "Series-resonant circuit at resonance",
  expression: "I = E/R; Q = X/R; VL = Q E",
  inputs: {
    volts: { symbol: "E", dimension: "voltage", meaning: "voltage across the circuit", minimum: 0, default: 1 },
    ohms: { symbol: "R", dimension: "resistance", meaning: "its resistance", above: 0 },
    henries: { symbol: "L", dimension: "inductance", meaning: "inductance", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance", above: 0 },
  },
  outputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "resonant frequency" },
    amps: { symbol: "I", dimension: "current", meaning: "current" },
    q: { symbol: "Q", dimension: "ratio", meaning: "quality factor" },
    partVolts: { symbol: "VL", dimension: "voltage", meaning: "voltage across coil and across capacitor" },
    bandwidthHertz: { symbol: "B", dimension: "frequency", meaning: "width between the 3 dB points" },
  },
  limits: "Constant resistance; source resistance is part of it.",
  source: "lessons-ac",
  compute: ({ volts, ohms, henries, farads }) => {
    const hertz = 1 / (2 * Math.PI * Math.sqrt(henries * farads));
    const q = Math.sqrt(henries / farads) / ohms;
    return { hertz, amps: volts / ohms, q, partVolts: q * volts, bandwidthHertz: hertz / q };
  },
});
