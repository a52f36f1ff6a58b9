import { defineFormula } from "../defineFormula.ts";

/** Drop of a vacuum rectifier: V = (I/k)^(2/3). SI base units in and out; FormulaError outside the limits. */
export const vacuumDiodeDrop = defineFormula({
  id: "vacuum-diode-drop",
  area: "rectifiers",
  title: "Drop of a vacuum rectifier",
  expression: "V = (I/k)^(2/3)",
  inputs: {
    amps: { symbol: "I", dimension: "current", meaning: "plate current", minimum: 0 },
    perveance: { symbol: "k", dimension: "perveance", meaning: "perveance of one plate", above: 0 },
  },
  outputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "drop from plate to cathode" },
    watts: { symbol: "P", dimension: "power", meaning: "plate dissipation at that steady current" },
  },
  limits: "Space-charge-limited, within the emission of the cathode.",
  source: "tube-models-inverted",
  compute: ({ amps, perveance }) => ({ volts: (amps / perveance) ** (2 / 3), watts: amps * (amps / perveance) ** (2 / 3) }),
});
