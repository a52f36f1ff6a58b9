import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Smallest series resistor of a shunt regulator: Rs = (E - V)/(Imax + IL). SI base units in and out; FormulaError outside the limits. */
export const regulatorResistorMinimum = defineFormula({
  id: "regulator-resistor-minimum",
  area: "regulators",
  title: "Smallest series resistor of a shunt regulator",
  expression: "Rs = (E - V)/(Imax + IL)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "highest supply voltage", above: 0 },
    regulatorVolts: { symbol: "V", dimension: "voltage", meaning: "regulated voltage", above: 0 },
    maximumAmps: { symbol: "Imax", dimension: "current", meaning: "greatest current of the device", above: 0 },
    loadAmps: { symbol: "IL", dimension: "current", meaning: "least load current", minimum: 0, default: 0 },
  },
  outputs: {
    ohms: { symbol: "Rs", dimension: "resistance", meaning: "series resistor" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it at that supply" },
  },
  limits: "Worst corner for the device: high line, load off. The regulated voltage lies below the supply.",
  source: "from-memory",
  compute: ({ supplyVolts, regulatorVolts, maximumAmps, loadAmps }) => {
    requireThat(regulatorVolts < supplyVolts, "regulatorVolts", regulatorVolts, "must be below supplyVolts");

    const amps = maximumAmps + loadAmps;
    return { ohms: (supplyVolts - regulatorVolts) / amps, watts: (supplyVolts - regulatorVolts) * amps };
  },
});
