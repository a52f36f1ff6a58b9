import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Parallel-resonant circuit: Zp = L/(C R); Q = X/R; B = f/Q. SI base units in and out; FormulaError outside the limits. */
export const parallelResonantCircuit = defineFormula({
  id: "parallel-resonant-circuit",
  area: "rf",
  title: "Parallel-resonant circuit",
  expression: "Zp = L/(C R); Q = X/R; B = f/Q",
  inputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "inductance", above: 0 },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance in series with it", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance", above: 0 },
  },
  outputs: {
    dynamicOhms: { symbol: "Zp", dimension: "resistance", meaning: "impedance at resonance" },
    q: { symbol: "Q", dimension: "ratio", meaning: "quality factor" },
    hertz: { symbol: "f", dimension: "frequency", meaning: "resonant frequency" },
    bandwidthHertz: { symbol: "B", dimension: "frequency", meaning: "width between the 3 dB points" },
  },
  limits: "All losses in the coil, Q of at least 10; below that the resonance shifts.",
  source: "lessons-ac",
  compute: ({ henries, ohms, farads }) => {
    const q = Math.sqrt(henries / farads) / ohms;
    requireThat(q >= 10, "ohms", ohms, "must be so low that Q is at least 10");
    const hertz = 1 / (2 * Math.PI * Math.sqrt(henries * farads));
    return { dynamicOhms: henries / (farads * ohms), q, hertz, bandwidthHertz: hertz / q };
  },
});
