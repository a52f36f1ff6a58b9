import { defineFormula } from "../defineFormula.ts";

/**
 * Melting integral of a current pulse by its shape: I2t1 = ip^2 t; I2t2 = ip^2 t/2; I2t3 = ip^2 t/3; I2t5 = ip^2 t/5; I2te = ip^2 t/2.
 * SI base units in and out; FormulaError outside the limits.
 */
export const pulseIntegral = defineFormula({
  id: "pulse-integral",
  area: "protection",
  title: "Melting integral of a current pulse by its shape",
  expression: "I2t1 = ip^2 t; I2t2 = ip^2 t/2; I2t3 = ip^2 t/3; I2t5 = ip^2 t/5; I2te = ip^2 t/2",
  inputs: {
    peakAmps: { symbol: "ip", dimension: "current", meaning: "peak", minimum: 0 },
    seconds: { symbol: "t", dimension: "time", meaning: "duration; for the exponential its time constant", minimum: 0 },
  },
  outputs: {
    rectangle: { symbol: "I2t1", dimension: "melting-integral", meaning: "rectangle, k = 1" },
    halfSine: { symbol: "I2t2", dimension: "melting-integral", meaning: "half sine, k = 1/2" },
    triangle: { symbol: "I2t3", dimension: "melting-integral", meaning: "triangle or ramp, k = 1/3" },
    parabola: { symbol: "I2t5", dimension: "melting-integral", meaning: "parabola, k = 1/5" },
    exponential: { symbol: "I2te", dimension: "melting-integral", meaning: "exponential decay, k = 1/2" },
  },
  limits: "The shape named; the whole exponential tail.",
  source: "fuse-maker-sheets",
  compute: ({ peakAmps, seconds }) => {
    const whole = peakAmps ** 2 * seconds;
    return { rectangle: whole, halfSine: whole / 2, triangle: whole / 3, parabola: whole / 5, exponential: whole / 2 };
  },
});
