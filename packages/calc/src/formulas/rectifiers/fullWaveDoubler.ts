import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Full-wave voltage doubler: Vdc = 2 (sqrt(2) Vrms - Vf); PIV = 2 sqrt(2) Vrms - Vf.
 * SI base units in and out; FormulaError outside the limits.
 */
export const fullWaveDoubler = defineFormula({
  id: "full-wave-doubler",
  area: "rectifiers",
  title: "Full-wave voltage doubler",
  expression: "Vdc = 2 (sqrt(2) Vrms - Vf); PIV = 2 sqrt(2) Vrms - Vf",
  inputs: {
    rmsVolts: { symbol: "Vrms", dimension: "voltage", meaning: "RMS of the winding", above: 0 },
    dropVolts: { symbol: "Vf", dimension: "voltage", meaning: "forward drop of each diode", minimum: 0, default: 0 },
  },
  outputs: {
    noLoadVolts: { symbol: "Vdc", dimension: "voltage", meaning: "direct voltage at light load" },
    inverseVolts: { symbol: "PIV", dimension: "voltage", meaning: "peak inverse voltage of a diode" },
    inverseRatio: { symbol: "k", dimension: "ratio", meaning: "PIV as a multiple of the RMS" },
  },
  limits:
    "Light load on a capacitor input; a load lowers the voltage (see capacitor-input-source-resistance). Take the highest line voltage and a margin of 1.5 to 2 for the diode. The drop must lie below the peak.",
  source: "circuit-theory",
  compute: ({ rmsVolts, dropVolts }) => {
    const peak = Math.SQRT2 * rmsVolts;
    const noLoadVolts = 2 * (peak - dropVolts);
    requireThat(noLoadVolts >= 0, "dropVolts", dropVolts, "must lie below the peak");
    const inverseVolts = 2 * peak - dropVolts;
    return { noLoadVolts, inverseVolts, inverseRatio: inverseVolts / rmsVolts };
  },
});
