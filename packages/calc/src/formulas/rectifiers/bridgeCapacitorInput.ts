import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Bridge rectifier with capacitor input: Vdc = sqrt(2) Vrms - 2 Vf; PIV = sqrt(2) Vrms - Vf.
 * SI base units in and out; FormulaError outside the limits.
 */
export const bridgeCapacitorInput = defineFormula({
  id: "bridge-capacitor-input",
  area: "rectifiers",
  title: "Bridge rectifier with capacitor input",
  expression: "Vdc = sqrt(2) Vrms - 2 Vf; PIV = sqrt(2) Vrms - Vf",
  inputs: {
    rmsVolts: { symbol: "Vrms", dimension: "voltage", meaning: "RMS of the whole winding", above: 0 },
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
    const noLoadVolts = peak - 2 * dropVolts;
    requireThat(noLoadVolts >= 0, "dropVolts", dropVolts, "must lie below the peak");
    const inverseVolts = noLoadVolts + dropVolts;
    return { noLoadVolts, inverseVolts, inverseRatio: inverseVolts / rmsVolts };
  },
});
