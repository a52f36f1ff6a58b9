import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Series dropping resistor: R = (E - V)/I; P = (E - V) I. SI base units in and out; FormulaError outside the limits. */
export const droppingResistor = defineFormula({
  id: "dropping-resistor",
  area: "dc",
  title: "Series dropping resistor",
  expression: "R = (E - V)/I; P = (E - V) I",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "supply voltage" },
    loadVolts: { symbol: "V", dimension: "voltage", meaning: "voltage wanted behind the resistor" },
    amps: { symbol: "I", dimension: "current", meaning: "current through the resistor, bleeder included", above: 0 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it" },
  },
  limits: "Steady current; with the load off, the whole supply voltage stands behind the resistor. The load voltage lies below the supply.",
  source: "neets-module-1",
  compute: ({ supplyVolts, loadVolts, amps }) => {
    requireThat(loadVolts < supplyVolts, "loadVolts", loadVolts, "must be below supplyVolts");
    return { ohms: (supplyVolts - loadVolts) / amps, watts: (supplyVolts - loadVolts) * amps };
  },
});
