import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";
import { sumOf } from "../sumOf.ts";

/** Gains and losses in decibels added up: G = G1 + G2 + ...; r = 10^(G/10). SI base units in and out; FormulaError outside the limits. */
export const decibelSum = defineFormula({
  id: "decibel-sum",
  area: "rf",
  title: "Gains and losses in decibels added up",
  expression: "G = G1 + G2 + ...; r = 10^(G/10)",
  inputs: {
    decibels: { symbol: "Gn", dimension: "level", meaning: "each gain; a loss is negative", minimum: -400, maximum: 400, list: true },
  },
  outputs: {
    sum: { symbol: "G", dimension: "level", meaning: "total" },
    ratio: { symbol: "r", dimension: "ratio", meaning: "power ratio" },
    loss: { symbol: "l", dimension: "ratio", meaning: "share of the power that is lost; negative for a gain" },
  },
  limits: "Stages that do not load each other.",
  source: "lessons-semiconductors",
  compute: ({ decibels }) => {
    const sum = sumOf(decibels);
    requireThat(Math.abs(sum) <= 400, "decibels", sum, "must add up to at most 400 dB either way");
    return { sum, ratio: 10 ** (sum / 10), loss: 1 - 10 ** (sum / 10) };
  },
});
