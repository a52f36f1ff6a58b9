import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/**
 * Low corner of a cathode bypass capacitor: f = 1/(2 pi Ck Rk'); Rk' = Rk||(rp + RL)/(mu + 1).
 * SI base units in and out; FormulaError outside the limits.
 */
export const cathodeBypassCorner = defineFormula({
  id: "cathode-bypass-corner",
  area: "tubes",
  title: "Low corner of a cathode bypass capacitor",
  expression: "f = 1/(2 pi Ck Rk'); Rk' = Rk||(rp + RL)/(mu + 1)",
  inputs: {
    farads: { symbol: "Ck", dimension: "capacitance", meaning: "bypass capacitor", above: 0 },
    cathodeOhms: { symbol: "Rk", dimension: "resistance", meaning: "cathode resistor", above: 0 },
    plateOhms: { symbol: "rp", dimension: "resistance", meaning: "plate resistance", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "plate load", minimum: 0 },
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor", above: 0 },
  },
  outputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "corner frequency" },
    seenOhms: { symbol: "Rk'", dimension: "resistance", meaning: "resistance that the capacitor bridges" },
  },
  limits: "The upper corner of the step, where the gain is about 3 dB below the full one if the step is large.",
  source: "circuit-theory",
  compute: ({ farads, cathodeOhms, plateOhms, loadOhms, amplificationFactor }) => {
    const seenOhms = parallelOf(cathodeOhms, (plateOhms + loadOhms) / (amplificationFactor + 1));
    return { hertz: 1 / (2 * Math.PI * farads * seenOhms), seenOhms };
  },
});
