import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Input capacitance of a stage and its high corner: Ci = Cgk + Cgp (1 + A); f = 1/(2 pi Rs Ci).
 * SI base units in and out; FormulaError outside the limits.
 */
export const millerInput = defineFormula({
  id: "miller-input",
  area: "tubes",
  title: "Input capacitance of a stage and its high corner",
  expression: "Ci = Cgk + Cgp (1 + A); f = 1/(2 pi Rs Ci)",
  inputs: {
    gridCathodeFarads: { symbol: "Cgk", dimension: "capacitance", meaning: "grid to cathode, strays included", minimum: 0 },
    gridPlateFarads: { symbol: "Cgp", dimension: "capacitance", meaning: "grid to plate, strays included", minimum: 0 },
    gain: { symbol: "A", dimension: "ratio", meaning: "gain of the stage", minimum: 0 },
    sourceOhms: { symbol: "Rs", dimension: "resistance", meaning: "resistance that feeds the grid", above: 0 },
  },
  outputs: {
    inputFarads: { symbol: "Ci", dimension: "capacitance", meaning: "input capacitance" },
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency where the source is 3 dB down" },
  },
  limits: "Resistive plate load; some capacitance there must be.",
  source: "circuit-theory",
  compute: ({ gridCathodeFarads, gridPlateFarads, gain, sourceOhms }) => {
    const inputFarads = gridCathodeFarads + gridPlateFarads * (1 + gain);
    requireThat(inputFarads > 0, "gridCathodeFarads", gridCathodeFarads, "must not be 0 F where gridPlateFarads is");
    return { inputFarads, hertz: 1 / (2 * Math.PI * sourceOhms * inputFarads) };
  },
});
