import { defineFormula } from "../defineFormula.ts";

/** Ripple frequency: fr = p f. SI base units in and out; FormulaError outside the limits. */
export const rippleFrequency = defineFormula({
  id: "ripple-frequency",
  area: "rectifiers",
  title: "Ripple frequency",
  expression: "fr = p f",
  inputs: {
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
    pulses: {
      symbol: "p",
      dimension: "ratio",
      meaning: "charging pulses in a cycle: 1 half wave, 2 full wave, bridge or full-wave doubler",
      minimum: 1,
      maximum: 12,
      whole: true,
    },
  },
  outputs: {
    rippleHertz: { symbol: "fr", dimension: "frequency", meaning: "lowest ripple frequency" },
  },
  limits: "Both halves alike: an open diode brings a full-wave supply back to the line frequency.",
  source: "neets-module-6",
  compute: ({ lineHertz, pulses }) => ({ rippleHertz: pulses * lineHertz }),
});
