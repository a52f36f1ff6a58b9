import { defineFormula } from "../defineFormula.ts";

/** Most power that a source can give: P = E^2/(4 Rs) at RL = Rs. SI base units in and out; FormulaError outside the limits. */
export const maxPowerTransfer = defineFormula({
  id: "max-power-transfer",
  area: "dc",
  title: "Most power that a source can give",
  expression: "P = E^2/(4 Rs) at RL = Rs",
  inputs: {
    openVolts: { symbol: "E", dimension: "voltage", meaning: "voltage of the source without load" },
    sourceOhms: { symbol: "Rs", dimension: "resistance", meaning: "its resistance", above: 0 },
  },
  outputs: {
    watts: { symbol: "P", dimension: "power", meaning: "power in a load equal to the source resistance" },
  },
  limits: "Half of the power stays in the source: right for signals, wrong for power supplies.",
  source: "lessons-dc",
  compute: ({ openVolts, sourceOhms }) => ({ watts: openVolts ** 2 / (4 * sourceOhms) }),
});
