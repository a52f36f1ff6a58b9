import { defineFormula } from "../defineFormula.ts";

/** Q from the bandwidth: Q = f/B. SI base units in and out; FormulaError outside the limits. */
export const qFromBandwidth = defineFormula({
  id: "q-from-bandwidth",
  area: "rf",
  title: "Q from the bandwidth",
  expression: "Q = f/B",
  inputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "center frequency", above: 0 },
    bandwidthHertz: { symbol: "B", dimension: "frequency", meaning: "width between the 3 dB points", above: 0 },
  },
  outputs: {
    q: { symbol: "Q", dimension: "ratio", meaning: "quality factor" },
  },
  limits: "One tuned circuit.",
  source: "lessons-ac",
  compute: ({ hertz, bandwidthHertz }) => ({ q: hertz / bandwidthHertz }),
});
