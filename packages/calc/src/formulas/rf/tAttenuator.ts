import { defineFormula } from "../defineFormula.ts";

/** T attenuator: R1 = Z (K - 1)/(K + 1); R2 = 2 Z K/(K^2 - 1); K = 10^(L/20). SI base units in and out; FormulaError outside the limits. */
export const tAttenuator = defineFormula({
  id: "t-attenuator",
  area: "rf",
  title: "T attenuator",
  expression: "R1 = Z (K - 1)/(K + 1); R2 = 2 Z K/(K^2 - 1); K = 10^(L/20)",
  inputs: {
    lineOhms: { symbol: "Z", dimension: "resistance", meaning: "impedance at both ends", above: 0 },
    lossDecibels: { symbol: "L", dimension: "level", meaning: "loss", above: 0, maximum: 200 },
  },
  outputs: {
    seriesOhms: { symbol: "R1", dimension: "resistance", meaning: "each series arm" },
    shuntOhms: { symbol: "R2", dimension: "resistance", meaning: "shunt arm" },
  },
  limits: "Same resistive impedance at both ends.",
  source: "lessons-semiconductors",
  compute: ({ lineOhms, lossDecibels }) => {
    const k = 10 ** (lossDecibels / 20);
    return { seriesOhms: (lineOhms * (k - 1)) / (k + 1), shuntOhms: (2 * lineOhms * k) / (k ** 2 - 1) };
  },
});
