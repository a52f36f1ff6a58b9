import { defineFormula } from "../defineFormula.ts";

/** Supply resistance of each plate of a rectifier: Rs = R2 + n^2 R1 + R. SI base units in and out; FormulaError outside the limits. */
export const plateSupplyResistance = defineFormula({
  id: "plate-supply-resistance",
  area: "rectifiers",
  title: "Supply resistance of each plate of a rectifier",
  expression: "Rs = R2 + n^2 R1 + R",
  inputs: {
    secondaryOhms: { symbol: "R2", dimension: "resistance", meaning: "resistance of one half of the secondary", minimum: 0 },
    primaryOhms: { symbol: "R1", dimension: "resistance", meaning: "resistance of the primary", minimum: 0 },
    ratio: { symbol: "n", dimension: "ratio", meaning: "turns of that half for each turn of the primary", above: 0 },
    addedOhms: { symbol: "R", dimension: "resistance", meaning: "resistor added in series with the plate", minimum: 0, default: 0 },
  },
  outputs: {
    ohms: { symbol: "Rs", dimension: "resistance", meaning: "supply resistance of each plate" },
  },
  limits: "Winding resistances as an ohmmeter shows them, cold; leakage inductance left out.",
  source: "rc-30",
  compute: ({ secondaryOhms, primaryOhms, ratio, addedOhms }) => ({ ohms: secondaryOhms + ratio ** 2 * primaryOhms + addedOhms }),
});
