import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Plate current and constants by a power law: I = K (Vp + mu Vg)^n; gm = dI/dVg; rp = 1/(dI/dVp).
 * SI base units in and out; FormulaError outside the limits.
 */
export const triodeLaw = defineFormula({
  id: "triode-law",
  area: "tubes",
  title: "Plate current and constants by a power law",
  expression: "I = K (Vp + mu Vg)^n; gm = dI/dVg; rp = 1/(dI/dVp)",
  inputs: {
    factor: { symbol: "K", dimension: "perveance", meaning: "factor of the law", above: 0 },
    plateVolts: { symbol: "Vp", dimension: "voltage", meaning: "plate to cathode" },
    gridVolts: { symbol: "Vg", dimension: "voltage", meaning: "grid to cathode" },
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor", above: 0 },
    exponent: { symbol: "n", dimension: "ratio", meaning: "exponent", above: 0, maximum: 3, default: 1.5 },
  },
  outputs: {
    plateAmps: { symbol: "I", dimension: "current", meaning: "plate current" },
    transconductance: { symbol: "gm", dimension: "conductance", meaning: "transconductance" },
    plateOhms: { symbol: "rp", dimension: "resistance", meaning: "plate resistance" },
  },
  limits: "Negative grid, above cut-off. The factor belongs to the plate-voltage form; its unit follows the exponent.",
  source: "circuit-theory",
  compute: ({ factor, plateVolts, gridVolts, amplificationFactor, exponent }) => {
    const drive = plateVolts + amplificationFactor * gridVolts;
    requireThat(drive > 0, "gridVolts", gridVolts, "must lie above cut-off");
    const slope = exponent * factor * drive ** (exponent - 1);
    return { plateAmps: factor * drive ** exponent, transconductance: amplificationFactor * slope, plateOhms: 1 / slope };
  },
});
