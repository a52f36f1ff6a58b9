import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Equivalent series resistance from the dissipation factor: ESR = D/(2 pi f C).
 * SI base units in and out; FormulaError outside the limits.
 */
export const capacitorEsr = defineFormula({
  id: "capacitor-esr",
  area: "protection",
  title: "Equivalent series resistance from the dissipation factor",
  expression: "ESR = D/(2 pi f C)",
  inputs: {
    dissipationFactor: { symbol: "D", dimension: "ratio", meaning: "dissipation factor (tan delta)", minimum: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance", above: 0 },
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency of the measurement", above: 0, default: 120 },
  },
  outputs: {
    ohms: { symbol: "ESR", dimension: "resistance", meaning: "equivalent series resistance" },
    q: { symbol: "Q", dimension: "ratio", meaning: "quality factor of the capacitor" },
  },
  limits: "At that frequency only; the dissipation factor is not 0.",
  source: "circuit-theory",
  compute: ({ dissipationFactor, farads, hertz }) => {
    requireThat(dissipationFactor > 0, "dissipationFactor", dissipationFactor, "must be above 0 for a quality factor");
    return { ohms: dissipationFactor / (2 * Math.PI * hertz * farads), q: 1 / dissipationFactor };
  },
});
