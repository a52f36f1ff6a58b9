import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";
import { sumOf } from "../sumOf.ts";

/** Power behind gains and losses: P' = P 10^((G1 + G2 + ...)/10). SI base units in and out; FormulaError outside the limits. */
export const powerThroughDecibels = defineFormula({
  id: "power-through-decibels",
  area: "rf",
  title: "Power behind gains and losses",
  expression: "P' = P 10^((G1 + G2 + ...)/10)",
  inputs: {
    watts: { symbol: "P", dimension: "power", meaning: "power at the start", minimum: 0 },
    decibels: { symbol: "Gn", dimension: "level", meaning: "each gain; a loss is negative", minimum: -400, maximum: 400, list: true },
  },
  outputs: {
    outputWatts: { symbol: "P'", dimension: "power", meaning: "power at the end" },
  },
  limits: "Matched stages; at most 400 dB in sum.",
  source: "fcc-extra-pool",
  compute: ({ watts, decibels }) => {
    const sum = sumOf(decibels);
    requireThat(Math.abs(sum) <= 400, "decibels", sum, "must add up to at most 400 dB either way");
    return { outputWatts: watts * 10 ** (sum / 10) };
  },
});
