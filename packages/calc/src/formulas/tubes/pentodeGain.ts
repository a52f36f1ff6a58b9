import { defineFormula } from "../defineFormula.ts";

/** Gain of a pentode stage: A = gm RL/(1 + RL/rp). SI base units in and out; FormulaError outside the limits. */
export const pentodeGain = defineFormula({
  id: "pentode-gain",
  area: "tubes",
  title: "Gain of a pentode stage",
  expression: "A = gm RL/(1 + RL/rp)",
  inputs: {
    transconductance: { symbol: "gm", dimension: "conductance", meaning: "transconductance at the operating point", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "plate load in parallel with the next grid resistor", above: 0 },
    plateOhms: {
      symbol: "rp",
      dimension: "resistance",
      meaning: "plate resistance of the tube",
      above: 0,
      open: true,
      default: Number.POSITIVE_INFINITY,
    },
  },
  outputs: {
    gain: { symbol: "A", dimension: "ratio", meaning: "voltage gain, the phase turned" },
  },
  limits: "Small signals, cathode and screen fully bypassed.",
  source: "circuit-theory",
  compute: ({ transconductance, loadOhms, plateOhms }) => ({ gain: (transconductance * loadOhms) / (1 + loadOhms / plateOhms) }),
});
