import { defineFormula } from "../defineFormula.ts";

/**
 * Current and voltage of an inductor after switching: I = If + (I0 - If) exp(-t R/L); VL = (E - I0 R) exp(-t R/L).
 * SI base units in and out; FormulaError outside the limits.
 */
export const rlRise = defineFormula({
  id: "rl-rise",
  area: "transients",
  title: "Current and voltage of an inductor after switching",
  expression: "I = If + (I0 - If) exp(-t R/L); VL = (E - I0 R) exp(-t R/L)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "supply" },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance of the whole loop", above: 0 },
    henries: { symbol: "L", dimension: "inductance", meaning: "inductor", above: 0 },
    seconds: { symbol: "t", dimension: "time", meaning: "time since switching", minimum: 0 },
    startAmps: { symbol: "I0", dimension: "current", meaning: "current at the start", default: 0 },
  },
  outputs: {
    amps: { symbol: "I", dimension: "current", meaning: "current" },
    inductorVolts: { symbol: "VL", dimension: "voltage", meaning: "voltage of the inductor" },
    timeConstant: { symbol: "tau", dimension: "time", meaning: "L/R" },
  },
  limits: "Constant supply and inductance.",
  source: "lessons-dc",
  compute: ({ supplyVolts, ohms, henries, seconds, startAmps }) => {
    const timeConstant = henries / ohms;
    const left = Math.exp(-seconds / timeConstant);
    const final = supplyVolts / ohms;
    return { amps: final + (startAmps - final) * left, inductorVolts: (supplyVolts - startAmps * ohms) * left, timeConstant };
  },
});
