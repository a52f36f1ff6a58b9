import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";
import { sumOf } from "../sumOf.ts";

/** Current and power of a chain of resistors: I = E/(R1 + R2 + ...); P = E I. SI base units in and out; FormulaError outside the limits. */
export const seriesCircuit = defineFormula({
  id: "series-circuit",
  area: "dc",
  title: "Current and power of a chain of resistors",
  expression: "I = E/(R1 + R2 + ...); P = E I",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "voltage across the chain" },
    ohms: { symbol: "Rn", dimension: "resistance", meaning: "each resistor", minimum: 0, list: true },
  },
  outputs: {
    amps: { symbol: "I", dimension: "current", meaning: "current through all of them" },
    watts: { symbol: "P", dimension: "power", meaning: "power of the chain" },
  },
  limits: "The resistances must not add up to nothing: a short has no finite current.",
  source: "lessons-dc",
  compute: ({ supplyVolts, ohms }) => {
    const total = sumOf(ohms);
    requireThat(total > 0, "ohms", total, "must add up to more than 0 ohm");
    return { amps: supplyVolts / total, watts: supplyVolts ** 2 / total };
  },
});
