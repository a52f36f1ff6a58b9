import { defineFormula } from "../defineFormula.ts";

/** Bandwidth from frequency and Q: B = f/Q. SI base units in and out; FormulaError outside the limits. */
export const bandwidth = defineFormula({
  id: "bandwidth",
  area: "rf",
  title: "Bandwidth from frequency and Q",
  expression: "B = f/Q",
  inputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "center frequency", above: 0 },
    q: { symbol: "Q", dimension: "ratio", meaning: "loaded quality factor", above: 0 },
  },
  outputs: {
    bandwidthHertz: { symbol: "B", dimension: "frequency", meaning: "width between the 3 dB points" },
  },
  limits: "One tuned circuit.",
  source: "fcc-extra-pool",
  compute: ({ hertz, q }) => ({ bandwidthHertz: hertz / q }),
});
