import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/** Low corner of a coupling capacitor: f = 1/(2 pi C (Rg + Zo)); Zo = rp||RL. SI base units in and out; FormulaError outside the limits. */
export const couplingCorner = defineFormula({
  id: "coupling-corner",
  area: "tubes",
  title: "Low corner of a coupling capacitor",
  expression: "f = 1/(2 pi C (Rg + Zo)); Zo = rp||RL",
  inputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "coupling capacitor", above: 0 },
    gridOhms: { symbol: "Rg", dimension: "resistance", meaning: "grid resistor of the next stage", above: 0 },
    plateOhms: {
      symbol: "rp",
      dimension: "resistance",
      meaning: "plate resistance of the driving tube",
      minimum: 0,
      open: true,
      default: 0,
    },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "its plate load", above: 0, open: true, default: Number.POSITIVE_INFINITY },
  },
  outputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency where the gain is 3 dB down" },
  },
  limits: "The one capacitor alone.",
  source: "circuit-theory",
  compute: ({ farads, gridOhms, plateOhms, loadOhms }) => ({
    hertz: 1 / (2 * Math.PI * farads * (gridOhms + parallelOf(plateOhms, loadOhms))),
  }),
});
