import { defineFormula } from "../defineFormula.ts";

/**
 * Voltage and circulating current of a tank: Vp = sqrt(2 P RL); I = Q Vrms/RL.
 * SI base units in and out; FormulaError outside the limits.
 */
export const tankCurrent = defineFormula({
  id: "tank-current",
  area: "rf",
  title: "Voltage and circulating current of a tank",
  expression: "Vp = sqrt(2 P RL); I = Q Vrms/RL",
  inputs: {
    watts: { symbol: "P", dimension: "power", meaning: "power", minimum: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load at the tank", above: 0 },
    q: { symbol: "Q", dimension: "ratio", meaning: "loaded Q", above: 0, default: 12 },
  },
  outputs: {
    peakVolts: { symbol: "Vp", dimension: "voltage", meaning: "peak voltage across the tank" },
    rmsAmps: { symbol: "I", dimension: "current", meaning: "RMS current of coil and capacitor" },
  },
  limits: "Q of 5 and more; at full modulation both double.",
  source: "circuit-theory",
  compute: ({ watts, loadOhms, q }) => ({
    peakVolts: Math.sqrt(2 * watts * loadOhms),
    rmsAmps: (q * Math.sqrt(watts * loadOhms)) / loadOhms,
  }),
});
