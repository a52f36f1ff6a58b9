import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Balancing resistor of capacitors in series: R = (N Vr - Vb)/dI. SI base units in and out; FormulaError outside the limits. */
export const balancingResistor = defineFormula({
  id: "balancing-resistor",
  area: "protection",
  title: "Balancing resistor of capacitors in series",
  expression: "R = (N Vr - Vb)/dI",
  inputs: {
    count: { symbol: "N", dimension: "ratio", meaning: "capacitors in series", minimum: 2, maximum: 20, whole: true, default: 2 },
    ratedVolts: { symbol: "Vr", dimension: "voltage", meaning: "rated voltage of each", above: 0 },
    busVolts: { symbol: "Vb", dimension: "voltage", meaning: "voltage across the chain", above: 0 },
    leakageSpreadAmps: { symbol: "dI", dimension: "current", meaning: "largest difference of their leakage currents", above: 0 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "largest resistor across each" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in each" },
    shareVolts: { symbol: "Vn", dimension: "voltage", meaning: "voltage of each when even" },
  },
  limits: "Equal capacitors; the chain's rating lies above the voltage across it.",
  source: "capacitor-maker-notes",
  compute: ({ count, ratedVolts, busVolts, leakageSpreadAmps }) => {
    requireThat(busVolts < count * ratedVolts, "busVolts", busVolts, "must be below count times ratedVolts");
    const ohms = (count * ratedVolts - busVolts) / leakageSpreadAmps;
    const shareVolts = busVolts / count;
    return { ohms, shareVolts, watts: shareVolts ** 2 / ohms };
  },
});
