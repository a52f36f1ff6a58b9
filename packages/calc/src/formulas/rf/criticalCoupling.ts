import { defineFormula } from "../defineFormula.ts";

/**
 * Critical coupling of a tuned pair: kc = 1/sqrt(Q1 Q2); B = sqrt(2) f/sqrt(Q1 Q2).
 * SI base units in and out; FormulaError outside the limits.
 */
export const criticalCoupling = defineFormula({
  id: "critical-coupling",
  area: "rf",
  title: "Critical coupling of a tuned pair",
  expression: "kc = 1/sqrt(Q1 Q2); B = sqrt(2) f/sqrt(Q1 Q2)",
  inputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "center frequency", above: 0 },
    firstQ: { symbol: "Q1", dimension: "ratio", meaning: "Q of the primary", above: 0 },
    secondQ: { symbol: "Q2", dimension: "ratio", meaning: "Q of the secondary", above: 0 },
  },
  outputs: {
    coupling: { symbol: "kc", dimension: "ratio", meaning: "coefficient of coupling" },
    bandwidthHertz: { symbol: "B", dimension: "frequency", meaning: "width between the 3 dB points at critical coupling" },
  },
  limits: "Both tuned to one frequency, Q high; the bandwidth for equal Q.",
  source: "circuit-theory",
  compute: ({ hertz, firstQ, secondQ }) => {
    const q = Math.sqrt(firstQ * secondQ);
    return { coupling: 1 / q, bandwidthHertz: (Math.SQRT2 * hertz) / q };
  },
});
