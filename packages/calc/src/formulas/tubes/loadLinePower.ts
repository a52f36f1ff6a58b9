import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Power and second harmonic from a load line: P = (Imax - Imin)(Vmax - Vmin)/8; D2 = ((Imax + Imin)/2 - I0)/(Imax - Imin).
 * SI base units in and out; FormulaError outside the limits.
 */
export const loadLinePower = defineFormula({
  id: "load-line-power",
  area: "tubes",
  title: "Power and second harmonic from a load line",
  expression: "P = (Imax - Imin)(Vmax - Vmin)/8; D2 = ((Imax + Imin)/2 - I0)/(Imax - Imin)",
  inputs: {
    maximumAmps: { symbol: "Imax", dimension: "current", meaning: "plate current at the positive grid peak", above: 0 },
    minimumAmps: { symbol: "Imin", dimension: "current", meaning: "plate current at the negative grid peak", minimum: 0 },
    quiescentAmps: { symbol: "I0", dimension: "current", meaning: "plate current without signal", minimum: 0 },
    maximumVolts: { symbol: "Vmax", dimension: "voltage", meaning: "plate voltage at the negative grid peak", above: 0 },
    minimumVolts: { symbol: "Vmin", dimension: "voltage", meaning: "plate voltage at the positive grid peak", minimum: 0 },
  },
  outputs: {
    watts: { symbol: "P", dimension: "power", meaning: "output power" },
    secondHarmonic: { symbol: "D2", dimension: "ratio", meaning: "second harmonic as a share of the fundamental" },
  },
  limits: "Single-ended class A, third harmonic left out. Each maximum lies above its minimum.",
  source: "from-memory",
  compute: ({ maximumAmps, minimumAmps, quiescentAmps, maximumVolts, minimumVolts }) => {
    requireThat(maximumAmps > minimumAmps, "maximumAmps", maximumAmps, "must be above minimumAmps");
    requireThat(maximumVolts > minimumVolts, "maximumVolts", maximumVolts, "must be above minimumVolts");
    const swing = maximumAmps - minimumAmps;
    return {
      watts: (swing * (maximumVolts - minimumVolts)) / 8,
      secondHarmonic: ((maximumAmps + minimumAmps) / 2 - quiescentAmps) / swing,
    };
  },
});
