import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/**
 * What the slope resistance of a shunt regulator leaves of a change: dV = Iz Rz; k = Rz||RL/(Rs + Rz||RL).
 * SI base units in and out; FormulaError outside the limits.
 */
export const regulatorSlope = defineFormula({
  id: "regulator-slope",
  area: "regulators",
  title: "What the slope resistance of a shunt regulator leaves of a change",
  expression: "dV = Iz Rz; k = Rz||RL/(Rs + Rz||RL)",
  inputs: {
    nominalVolts: {
      symbol: "V0",
      dimension: "voltage",
      meaning: "voltage of the device at no current, extrapolated",
      minimum: 0,
      default: 0,
    },
    amps: { symbol: "Iz", dimension: "current", meaning: "device current", minimum: 0 },
    slopeOhms: { symbol: "Rz", dimension: "resistance", meaning: "slope resistance", minimum: 0 },
    seriesOhms: { symbol: "Rs", dimension: "resistance", meaning: "series resistor", above: 0 },
    rippleVolts: { symbol: "Vi", dimension: "voltage", meaning: "ripple of the supply", minimum: 0, default: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0, open: true, default: Number.POSITIVE_INFINITY },
  },
  outputs: {
    riseVolts: { symbol: "dV", dimension: "voltage", meaning: "rise by the current" },
    outputVolts: { symbol: "V", dimension: "voltage", meaning: "voltage at that current" },
    outputRippleVolts: { symbol: "Vo", dimension: "voltage", meaning: "ripple across the device" },
    factor: { symbol: "k", dimension: "ratio", meaning: "share of the ripple that passes" },
  },
  limits: "Small changes about a point where the device conducts.",
  source: "circuit-theory",
  compute: ({ nominalVolts, amps, slopeOhms, seriesOhms, rippleVolts, loadOhms }) => {
    const low = parallelOf(slopeOhms, loadOhms);
    const factor = low / (seriesOhms + low);
    return { riseVolts: amps * slopeOhms, outputVolts: nominalVolts + amps * slopeOhms, outputRippleVolts: rippleVolts * factor, factor };
  },
});
