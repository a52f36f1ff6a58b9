import { defineFormula } from "../defineFormula.ts";

/** Gain of a triode stage: A = mu RL/(rp + RL + (mu + 1) Rk). SI base units in and out; FormulaError outside the limits. */
export const triodeGain = defineFormula({
  id: "triode-gain",
  area: "tubes",
  title: "Gain of a triode stage",
  expression: "A = mu RL/(rp + RL + (mu + 1) Rk)",
  inputs: {
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor", above: 0 },
    plateOhms: { symbol: "rp", dimension: "resistance", meaning: "plate resistance of the tube", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "plate load in parallel with the next grid resistor", above: 0 },
    cathodeOhms: { symbol: "Rk", dimension: "resistance", meaning: "cathode resistor without bypass", minimum: 0, default: 0 },
  },
  outputs: {
    gain: { symbol: "A", dimension: "ratio", meaning: "voltage gain, the phase turned" },
    outputOhms: { symbol: "Zo", dimension: "resistance", meaning: "resistance seen at the plate, beside the load" },
  },
  limits: "Small signals, middle of the band, common cathode.",
  source: "circuit-theory",
  compute: ({ amplificationFactor, plateOhms, loadOhms, cathodeOhms }) => {
    const tubeOhms = plateOhms + (amplificationFactor + 1) * cathodeOhms;
    return { gain: (amplificationFactor * loadOhms) / (tubeOhms + loadOhms), outputOhms: tubeOhms };
  },
});
