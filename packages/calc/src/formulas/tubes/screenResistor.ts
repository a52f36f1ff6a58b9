import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Screen dropping resistor: Rs = (E - Vg2)/Ig2. SI base units in and out; FormulaError outside the limits. */
export const screenResistor = defineFormula({
  id: "screen-resistor",
  area: "tubes",
  title: "Screen dropping resistor",
  expression: "Rs = (E - Vg2)/Ig2",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "supply", above: 0 },
    screenVolts: { symbol: "Vg2", dimension: "voltage", meaning: "screen voltage wanted", minimum: 0 },
    screenAmps: { symbol: "Ig2", dimension: "current", meaning: "screen current", above: 0 },
  },
  outputs: {
    ohms: { symbol: "Rs", dimension: "resistance", meaning: "resistor" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it" },
  },
  limits: "Without screen current, as with the key up, the screen rises to the supply. The screen lies below it.",
  source: "circuit-theory",
  compute: ({ supplyVolts, screenVolts, screenAmps }) => {
    requireThat(screenVolts < supplyVolts, "screenVolts", screenVolts, "must be below supplyVolts");
    return { ohms: (supplyVolts - screenVolts) / screenAmps, watts: (supplyVolts - screenVolts) * screenAmps };
  },
});
