import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Series resistor that biases a shunt regulator in the middle of its range: Rs = (E - V)/((Imin + Imax)/2 + IL).
 * SI base units in and out; FormulaError outside the limits.
 */
export const regulatorResistorMiddle = defineFormula({
  id: "regulator-resistor-middle",
  area: "regulators",
  title: "Series resistor that biases a shunt regulator in the middle of its range",
  expression: "Rs = (E - V)/((Imin + Imax)/2 + IL)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "supply", above: 0 },
    regulatorVolts: { symbol: "V", dimension: "voltage", meaning: "regulated voltage", above: 0 },
    minimumAmps: { symbol: "Imin", dimension: "current", meaning: "least current of the device", minimum: 0 },
    maximumAmps: { symbol: "Imax", dimension: "current", meaning: "greatest current of the device", above: 0 },
    loadAmps: { symbol: "IL", dimension: "current", meaning: "usual load current", minimum: 0, default: 0 },
  },
  outputs: {
    ohms: { symbol: "Rs", dimension: "resistance", meaning: "series resistor" },
  },
  limits: "Load and line swing evenly about the usual. The regulated voltage lies below the supply, the least current below the greatest.",
  source: "fcc-element-3",
  compute: ({ supplyVolts, regulatorVolts, minimumAmps, maximumAmps, loadAmps }) => {
    requireThat(regulatorVolts < supplyVolts, "regulatorVolts", regulatorVolts, "must be below supplyVolts");

    requireThat(minimumAmps <= maximumAmps, "minimumAmps", minimumAmps, "must not be above maximumAmps");
    return { ohms: (supplyVolts - regulatorVolts) / ((minimumAmps + maximumAmps) / 2 + loadAmps) };
  },
});
