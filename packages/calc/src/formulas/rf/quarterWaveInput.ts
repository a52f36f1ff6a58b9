import { defineFormula } from "../defineFormula.ts";

/** Input impedance of a quarter-wave line: Zin = Z0^2/ZL. SI base units in and out; FormulaError outside the limits. */
export const quarterWaveInput = defineFormula({
  id: "quarter-wave-input",
  area: "rf",
  title: "Input impedance of a quarter-wave line",
  expression: "Zin = Z0^2/ZL",
  inputs: {
    lineOhms: { symbol: "Z0", dimension: "resistance", meaning: "characteristic impedance", above: 0 },
    loadOhms: { symbol: "ZL", dimension: "resistance", meaning: "load", above: 0 },
  },
  outputs: {
    inputOhms: { symbol: "Zin", dimension: "resistance", meaning: "input impedance" },
  },
  limits: "Resistive load, odd number of quarter waves, no loss.",
  source: "lessons-ac",
  compute: ({ lineOhms, loadOhms }) => ({ inputOhms: lineOhms ** 2 / loadOhms }),
});
