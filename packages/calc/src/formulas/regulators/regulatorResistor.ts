import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Largest series resistor of a shunt regulator: Rs = (E - V)/(Imin + IL). SI base units in and out; FormulaError outside the limits. */
export const regulatorResistor = defineFormula({
  id: "regulator-resistor",
  area: "regulators",
  title: "Largest series resistor of a shunt regulator",
  expression: "Rs = (E - V)/(Imin + IL)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "lowest supply voltage", above: 0 },
    regulatorVolts: { symbol: "V", dimension: "voltage", meaning: "regulated voltage", above: 0 },
    minimumAmps: { symbol: "Imin", dimension: "current", meaning: "least current of the device", minimum: 0 },
    loadAmps: { symbol: "IL", dimension: "current", meaning: "greatest load current", minimum: 0 },
  },
  outputs: {
    ohms: { symbol: "Rs", dimension: "resistance", meaning: "series resistor" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it at that supply" },
  },
  limits: "Worst corner for regulation: low line, full load. The regulated voltage lies below the supply.",
  source: "common-practice",
  compute: ({ supplyVolts, regulatorVolts, minimumAmps, loadAmps }) => {
    requireThat(regulatorVolts < supplyVolts, "regulatorVolts", regulatorVolts, "must be below supplyVolts");

    const amps = minimumAmps + loadAmps;
    requireThat(amps > 0, "minimumAmps", minimumAmps, "must be above 0 A where there is no load");
    return { ohms: (supplyVolts - regulatorVolts) / amps, watts: (supplyVolts - regulatorVolts) * amps };
  },
});
