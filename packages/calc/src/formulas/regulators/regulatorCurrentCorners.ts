import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Current of a shunt regulator at the corners of line and load: Imin = (E1 - V)/Rs - I2; Imax = (E2 - V)/Rs - I1.
 * SI base units in and out; FormulaError outside the limits.
 */
export const regulatorCurrentCorners = defineFormula({
  id: "regulator-current-corners",
  area: "regulators",
  title: "Current of a shunt regulator at the corners of line and load",
  expression: "Imin = (E1 - V)/Rs - I2; Imax = (E2 - V)/Rs - I1",
  inputs: {
    lowSupplyVolts: { symbol: "E1", dimension: "voltage", meaning: "lowest supply", above: 0 },
    highSupplyVolts: { symbol: "E2", dimension: "voltage", meaning: "highest supply", above: 0 },
    seriesOhms: { symbol: "Rs", dimension: "resistance", meaning: "series resistor", above: 0 },
    regulatorVolts: { symbol: "V", dimension: "voltage", meaning: "regulated voltage", above: 0 },
    leastLoadAmps: { symbol: "I1", dimension: "current", meaning: "least load current", minimum: 0, default: 0 },
    greatestLoadAmps: { symbol: "I2", dimension: "current", meaning: "greatest load current", minimum: 0 },
  },
  outputs: {
    leastAmps: {
      symbol: "Imin",
      dimension: "current",
      meaning: "device current at low line and full load; negative: it does not regulate there",
    },
    greatestAmps: { symbol: "Imax", dimension: "current", meaning: "device current at high line and least load" },
    seriesWatts: { symbol: "P", dimension: "power", meaning: "heat in the series resistor at high line" },
  },
  limits: "Constant device voltage, below the lowest supply.",
  source: "common-practice",
  compute: ({ lowSupplyVolts, highSupplyVolts, seriesOhms, regulatorVolts, leastLoadAmps, greatestLoadAmps }) => {
    requireThat(highSupplyVolts >= lowSupplyVolts, "highSupplyVolts", highSupplyVolts, "must not be below lowSupplyVolts");
    requireThat(greatestLoadAmps >= leastLoadAmps, "greatestLoadAmps", greatestLoadAmps, "must not be below leastLoadAmps");
    requireThat(regulatorVolts < lowSupplyVolts, "regulatorVolts", regulatorVolts, "must be below lowSupplyVolts");
    return {
      leastAmps: (lowSupplyVolts - regulatorVolts) / seriesOhms - greatestLoadAmps,
      greatestAmps: (highSupplyVolts - regulatorVolts) / seriesOhms - leastLoadAmps,
      seriesWatts: (highSupplyVolts - regulatorVolts) ** 2 / seriesOhms,
    };
  },
});
