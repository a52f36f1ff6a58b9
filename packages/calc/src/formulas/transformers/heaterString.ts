import { defineFormula } from "../defineFormula.ts";
import { sumOf } from "../sumOf.ts";

/**
 * Series heater string on the line: R = (E - V1 - V2 - ...)/Ih; P = (E - sum V) Ih.
 * SI base units in and out; FormulaError outside the limits.
 */
export const heaterString = defineFormula({
  id: "heater-string",
  area: "transformers",
  title: "Series heater string on the line",
  expression: "R = (E - V1 - V2 - ...)/Ih; P = (E - sum V) Ih",
  inputs: {
    lineVolts: { symbol: "E", dimension: "voltage", meaning: "line voltage", above: 0 },
    heaterVolts: { symbol: "Vn", dimension: "voltage", meaning: "voltage of each heater", above: 0, list: true },
    heaterAmps: { symbol: "Ih", dimension: "current", meaning: "current of the string", above: 0 },
  },
  outputs: {
    sumVolts: { symbol: "Vh", dimension: "voltage", meaning: "all heaters together" },
    dropVolts: {
      symbol: "Vd",
      dimension: "voltage",
      meaning: "what the resistor drops; negative when the heaters want more than the line",
    },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistor; 0 when nothing is to be dropped" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it" },
  },
  limits: "Heaters of one current, hot. A cold string draws several times as much, and the tube with the fastest heater takes the most.",
  source: "circuit-theory",
  compute: ({ lineVolts, heaterVolts, heaterAmps }) => {
    const sumVolts = sumOf(heaterVolts);
    const dropVolts = lineVolts - sumVolts;
    const left = Math.max(0, dropVolts);
    return { sumVolts, dropVolts, ohms: left / heaterAmps, watts: left * heaterAmps };
  },
});
