import { defineFormula } from "../defineFormula.ts";

/** Melting integral of a trapezoidal pulse: I2t = (ip^2 + ip ib + ib^2) t/3. SI base units in and out; FormulaError outside the limits. */
export const trapezoidIntegral = defineFormula({
  id: "trapezoid-integral",
  area: "protection",
  title: "Melting integral of a trapezoidal pulse",
  expression: "I2t = (ip^2 + ip ib + ib^2) t/3",
  inputs: {
    startAmps: { symbol: "ib", dimension: "current", meaning: "current at the start", minimum: 0 },
    endAmps: { symbol: "ip", dimension: "current", meaning: "current at the end", minimum: 0 },
    seconds: { symbol: "t", dimension: "time", meaning: "duration", minimum: 0 },
  },
  outputs: {
    integral: { symbol: "I2t", dimension: "melting-integral", meaning: "melting integral" },
  },
  limits: "Straight line between both.",
  source: "fuse-maker-sheets",
  compute: ({ startAmps, endAmps, seconds }) => ({ integral: ((endAmps ** 2 + endAmps * startAmps + startAmps ** 2) * seconds) / 3 }),
});
