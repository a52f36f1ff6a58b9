import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Output of a capacitor-input rectifier at light load: Vdc = Vp (1 - 1/(2 fr R C)).
 * SI base units in and out; FormulaError outside the limits.
 */
export const capacitorInputOutput = defineFormula({
  id: "capacitor-input-output",
  area: "rectifiers",
  title: "Output of a capacitor-input rectifier at light load",
  expression: "Vdc = Vp (1 - 1/(2 fr R C))",
  inputs: {
    peakVolts: { symbol: "Vp", dimension: "voltage", meaning: "peak behind the rectifier", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0, open: true },
    farads: { symbol: "C", dimension: "capacitance", meaning: "input capacitor", above: 0 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
    pulses: { symbol: "p", dimension: "ratio", meaning: "charging pulses in a cycle", minimum: 1, maximum: 2, whole: true, default: 2 },
  },
  outputs: {
    outputVolts: { symbol: "Vdc", dimension: "voltage", meaning: "direct voltage" },
    amps: { symbol: "I", dimension: "current", meaning: "load current at that voltage" },
  },
  limits: "A source without resistance and a long time constant: fr R C of at least 5, else the linear discharge is no longer true.",
  source: "circuit-theory",
  compute: ({ peakVolts, loadOhms, farads, lineHertz, pulses }) => {
    const periods = pulses * lineHertz * loadOhms * farads;
    requireThat(periods >= 5, "loadOhms", loadOhms, "must be so high that fr R C is at least 5");
    const outputVolts = peakVolts * (1 - 1 / (2 * periods));
    return { outputVolts, amps: outputVolts / loadOhms };
  },
});
