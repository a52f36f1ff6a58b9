import { defineFormula } from "../defineFormula.ts";

/**
 * Power of a transformer-coupled class A stage at full swing: R' = n^2 RL; P = I^2 R'/2.
 * SI base units in and out; FormulaError outside the limits.
 */
export const transformerCoupledOutput = defineFormula({
  id: "transformer-coupled-output",
  area: "tubes",
  title: "Power of a transformer-coupled class A stage at full swing",
  expression: "R' = n^2 RL; P = I^2 R'/2",
  inputs: {
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load at the secondary", above: 0 },
    ratio: { symbol: "n", dimension: "ratio", meaning: "primary turns for each secondary turn", above: 0 },
    quiescentAmps: { symbol: "I", dimension: "current", meaning: "plate current without signal", above: 0 },
  },
  outputs: {
    plateLoadOhms: { symbol: "R'", dimension: "resistance", meaning: "load at the plate" },
    watts: { symbol: "P", dimension: "power", meaning: "power at full swing" },
    peakVolts: { symbol: "Vp", dimension: "voltage", meaning: "peak swing at the plate" },
  },
  limits: "Current swings from nought to twice the quiescent one; lossless transformer. A tube reaches less.",
  source: "circuit-theory",
  compute: ({ loadOhms, ratio, quiescentAmps }) => {
    const plateLoadOhms = ratio ** 2 * loadOhms;
    return { plateLoadOhms, watts: (quiescentAmps ** 2 * plateLoadOhms) / 2, peakVolts: quiescentAmps * plateLoadOhms };
  },
});
