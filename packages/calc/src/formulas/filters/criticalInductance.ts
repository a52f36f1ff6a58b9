import { defineFormula } from "../defineFormula.ts";

/**
 * Critical and optimum inductance of a choke-input filter: Lc = RL/(3 w); Lopt = 2 Lc.
 * SI base units in and out; FormulaError outside the limits.
 */
export const criticalInductance = defineFormula({
  id: "critical-inductance",
  area: "filters",
  title: "Critical and optimum inductance of a choke-input filter",
  expression: "Lc = RL/(3 w); Lopt = 2 Lc",
  inputs: {
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "lightest load, bleeder included", above: 0 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
    seriesOhms: { symbol: "Rs", dimension: "resistance", meaning: "resistance of choke and source", minimum: 0, default: 0 },
  },
  outputs: {
    criticalHenries: { symbol: "Lc", dimension: "inductance", meaning: "least inductance that keeps the current flowing" },
    optimumHenries: { symbol: "Lo", dimension: "inductance", meaning: "twice that, for good regulation" },
  },
  limits: "Full wave, w of the line, single phase. A swinging choke must have it at the lightest load.",
  source: "circuit-theory",
  compute: ({ loadOhms, lineHertz, seriesOhms }) => {
    const criticalHenries = (loadOhms + seriesOhms) / (3 * 2 * Math.PI * lineHertz);
    return { criticalHenries, optimumHenries: 2 * criticalHenries };
  },
});
