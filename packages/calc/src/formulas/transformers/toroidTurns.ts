import { defineFormula } from "../defineFormula.ts";

/** Turns for an inductance on a core: N = sqrt(L/AL). SI base units in and out; FormulaError outside the limits. */
export const toroidTurns = defineFormula({
  id: "toroid-turns",
  area: "transformers",
  title: "Turns for an inductance on a core",
  expression: "N = sqrt(L/AL)",
  inputs: {
    henries: { symbol: "L", dimension: "inductance", meaning: "inductance wanted", above: 0 },
    inductanceFactor: { symbol: "AL", dimension: "inductance-per-turn-squared", meaning: "inductance for one turn squared", above: 0 },
  },
  outputs: {
    turns: { symbol: "N", dimension: "ratio", meaning: "turns, not rounded" },
  },
  limits: "Below saturation; a turn is each pass through the hole.",
  source: "fcc-extra-pool",
  compute: ({ henries, inductanceFactor }) => ({ turns: Math.sqrt(henries / inductanceFactor) }),
});
