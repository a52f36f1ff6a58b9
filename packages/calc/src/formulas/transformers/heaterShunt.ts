import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Shunt across a heater of less current in a series string: R = Vh/(Is - Ih).
 * SI base units in and out; FormulaError outside the limits.
 */
export const heaterShunt = defineFormula({
  id: "heater-shunt",
  area: "transformers",
  title: "Shunt across a heater of less current in a series string",
  expression: "R = Vh/(Is - Ih)",
  inputs: {
    heaterVolts: { symbol: "Vh", dimension: "voltage", meaning: "voltage of that heater", above: 0 },
    heaterAmps: { symbol: "Ih", dimension: "current", meaning: "its current", above: 0 },
    stringAmps: { symbol: "Is", dimension: "current", meaning: "current of the string", above: 0 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "shunt across the heater" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it" },
  },
  limits: "Hot heaters; the string carries more than the heater takes. An open shunt burns the heater out.",
  source: "circuit-theory",
  compute: ({ heaterVolts, heaterAmps, stringAmps }) => {
    requireThat(stringAmps > heaterAmps, "stringAmps", stringAmps, "must be above heaterAmps");
    return { ohms: heaterVolts / (stringAmps - heaterAmps), watts: heaterVolts * (stringAmps - heaterAmps) };
  },
});
