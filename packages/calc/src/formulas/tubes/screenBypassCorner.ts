import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/**
 * Low corner of a screen bypass capacitor: f = 1/(2 pi C (Rs||rs)); rs = mu_s/gm_s.
 * SI base units in and out; FormulaError outside the limits.
 */
export const screenBypassCorner = defineFormula({
  id: "screen-bypass-corner",
  area: "tubes",
  title: "Low corner of a screen bypass capacitor",
  expression: "f = 1/(2 pi C (Rs||rs)); rs = mu_s/gm_s",
  inputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "bypass capacitor", above: 0 },
    seriesOhms: { symbol: "Rs", dimension: "resistance", meaning: "screen dropping resistor", above: 0 },
    screenFactor: { symbol: "mu_s", dimension: "ratio", meaning: "amplification factor grid to screen", above: 0 },
    screenTransconductance: { symbol: "gm_s", dimension: "conductance", meaning: "transconductance grid to screen", above: 0 },
  },
  outputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "corner frequency" },
    screenOhms: { symbol: "rs", dimension: "resistance", meaning: "resistance of the screen itself" },
  },
  limits: "Screen current about a tenth to a fifth of the plate current, so its transconductance likewise.",
  source: "circuit-theory",
  compute: ({ farads, seriesOhms, screenFactor, screenTransconductance }) => {
    const screenOhms = screenFactor / screenTransconductance;
    return { hertz: 1 / (2 * Math.PI * farads * parallelOf(seriesOhms, screenOhms)), screenOhms };
  },
});
