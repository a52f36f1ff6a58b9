import { defineFormula } from "../defineFormula.ts";

/**
 * Tube constants from small steps on the curves: rp = dVp/dIp; gm = dIp/dVg; mu = gm rp.
 * SI base units in and out; FormulaError outside the limits.
 */
export const tubeConstantsFromCurves = defineFormula({
  id: "tube-constants-from-curves",
  area: "tubes",
  title: "Tube constants from small steps on the curves",
  expression: "rp = dVp/dIp; gm = dIp/dVg; mu = gm rp",
  inputs: {
    plateStepVolts: { symbol: "dVp", dimension: "voltage", meaning: "step of plate voltage at constant grid", above: 0 },
    plateStepAmps: { symbol: "dI1", dimension: "current", meaning: "change of plate current by it", above: 0 },
    gridStepVolts: { symbol: "dVg", dimension: "voltage", meaning: "step of grid voltage at constant plate", above: 0 },
    gridStepAmps: { symbol: "dI2", dimension: "current", meaning: "change of plate current by it", above: 0 },
  },
  outputs: {
    plateOhms: { symbol: "rp", dimension: "resistance", meaning: "plate resistance" },
    transconductance: { symbol: "gm", dimension: "conductance", meaning: "transconductance" },
    amplificationFactor: { symbol: "mu", dimension: "ratio", meaning: "amplification factor" },
  },
  limits: "Small steps about one point; reading errors of some percent are usual.",
  source: "circuit-theory",
  compute: ({ plateStepVolts, plateStepAmps, gridStepVolts, gridStepAmps }) => {
    const [plateOhms, transconductance] = [plateStepVolts / plateStepAmps, gridStepAmps / gridStepVolts];
    return { plateOhms, transconductance, amplificationFactor: plateOhms * transconductance };
  },
});
