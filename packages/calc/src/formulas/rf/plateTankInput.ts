import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Input capacitor of a plate tank: RL = V/(k I); X = RL/Q; C = 1/(2 pi f X). SI base units in and out; FormulaError outside the limits. */
export const plateTankInput = defineFormula({
  id: "plate-tank-input",
  area: "rf",
  title: "Input capacitor of a plate tank",
  expression: "RL = V/(k I); X = RL/Q; C = 1/(2 pi f X)",
  inputs: {
    plateVolts: { symbol: "V", dimension: "voltage", meaning: "plate voltage", above: 0 },
    plateAmps: { symbol: "I", dimension: "current", meaning: "plate current", above: 0 },
    q: { symbol: "Q", dimension: "ratio", meaning: "loaded Q", above: 0, default: 12 },
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency", above: 0 },
    tubeFarads: { symbol: "Ct", dimension: "capacitance", meaning: "output capacitance of the tube and strays", minimum: 0, default: 0 },
    divisor: {
      symbol: "k",
      dimension: "ratio",
      meaning: "2 class C, 1.57 to 1.8 class B, 1.3 class A",
      minimum: 1,
      maximum: 2,
      default: 2,
    },
  },
  outputs: {
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "plate load" },
    reactanceOhms: { symbol: "X", dimension: "resistance", meaning: "reactance of the whole capacitance" },
    totalFarads: { symbol: "C", dimension: "capacitance", meaning: "whole capacitance" },
    addedFarads: { symbol: "Ca", dimension: "capacitance", meaning: "what the capacitor must add" },
  },
  limits: "Resonant tank at full output; the tube's own capacitance must not exceed the whole.",
  source: "common-practice",
  compute: ({ plateVolts, plateAmps, q, hertz, tubeFarads, divisor }) => {
    const loadOhms = plateVolts / (divisor * plateAmps);
    const reactanceOhms = loadOhms / q;
    const totalFarads = 1 / (2 * Math.PI * hertz * reactanceOhms);
    requireThat(tubeFarads <= totalFarads, "tubeFarads", tubeFarads, "must not exceed the capacitance that the tank wants");
    return { loadOhms, reactanceOhms, totalFarads, addedFarads: totalFarads - tubeFarads };
  },
});
