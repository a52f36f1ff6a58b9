import { defineFormula } from "../defineFormula.ts";

/**
 * Oscillator and image frequency of a superheterodyne: fo = fs + fi; fim = fs + 2 fi.
 * SI base units in and out; FormulaError outside the limits.
 */
export const imageFrequency = defineFormula({
  id: "image-frequency",
  area: "rf",
  title: "Oscillator and image frequency of a superheterodyne",
  expression: "fo = fs + fi; fim = fs + 2 fi",
  inputs: {
    signalHertz: { symbol: "fs", dimension: "frequency", meaning: "signal", above: 0 },
    intermediateHertz: { symbol: "fi", dimension: "frequency", meaning: "intermediate frequency", above: 0 },
  },
  outputs: {
    oscillatorHertz: { symbol: "fo", dimension: "frequency", meaning: "oscillator above the signal" },
    imageHertz: { symbol: "fim", dimension: "frequency", meaning: "image above the signal" },
  },
  limits: "Oscillator above the signal.",
  source: "circuit-theory",
  compute: ({ signalHertz, intermediateHertz }) => ({
    oscillatorHertz: signalHertz + intermediateHertz,
    imageHertz: signalHertz + 2 * intermediateHertz,
  }),
});
