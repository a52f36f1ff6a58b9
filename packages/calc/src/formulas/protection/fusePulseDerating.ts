import { defineFormula } from "../defineFormula.ts";

/**
 * Share of the melting integral that a fuse stands so many times: k = 48 % (100 pulses), 38 % (1000), 29 % (10 000), 22 % (100 000).
 * SI base units in and out; FormulaError outside the limits.
 */
export const fusePulseDerating = defineFormula({
  id: "fuse-pulse-derating",
  area: "protection",
  title: "Share of the melting integral that a fuse stands so many times",
  expression: "k = 48 % (100 pulses), 38 % (1000), 29 % (10 000), 22 % (100 000)",
  inputs: {
    pulses: { symbol: "N", dimension: "ratio", meaning: "pulses in the life of the fuse", minimum: 100, maximum: 100000, whole: true },
    pulseIntegral: { symbol: "I2t", dimension: "melting-integral", meaning: "melting integral of one pulse", minimum: 0, default: 0 },
  },
  outputs: {
    share: { symbol: "k", dimension: "ratio", meaning: "pulse as a share of the fuse's melting integral" },
    neededIntegral: { symbol: "I2tm", dimension: "melting-integral", meaning: "melting integral that the fuse must have" },
  },
  limits: "Between the printed points a straight line over the logarithm of the count. Ten seconds between pulses.",
  source: "fuse-maker-sheets",
  compute: ({ pulses, pulseIntegral }) => {
    const table = [0.48, 0.38, 0.29, 0.22];
    const place = Math.log10(pulses) - 2;
    const index = Math.min(2, Math.floor(place));
    const [low = 0, high = 0] = [table[index], table[index + 1]];
    const share = low + (high - low) * (place - index);
    return { share, neededIntegral: pulseIntegral / share };
  },
});
