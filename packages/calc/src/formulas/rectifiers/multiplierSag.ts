import { defineFormula } from "../defineFormula.ts";

/**
 * Sag and ripple of a loaded multiplier ladder: dV = I/(f C) (2 n^3/3 + n^2/2 - n/6); Vpp = I/(f C) n (n + 1)/2.
 * SI base units in and out; FormulaError outside the limits.
 */
export const multiplierSag = defineFormula({
  id: "multiplier-sag",
  area: "rectifiers",
  title: "Sag and ripple of a loaded multiplier ladder",
  expression: "dV = I/(f C) (2 n^3/3 + n^2/2 - n/6); Vpp = I/(f C) n (n + 1)/2",
  inputs: {
    amps: { symbol: "I", dimension: "current", meaning: "load current", minimum: 0 },
    stages: { symbol: "n", dimension: "ratio", meaning: "doubler stages", minimum: 1, maximum: 100, whole: true },
    hertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "each capacitor, all equal", above: 0 },
  },
  outputs: {
    sagVolts: { symbol: "dV", dimension: "voltage", meaning: "loss of direct voltage" },
    rippleVolts: { symbol: "Vpp", dimension: "voltage", meaning: "ripple, peak to peak" },
  },
  limits: "Half-wave ladder of equal capacitors, sag small beside the no-load voltage.",
  source: "from-memory",
  compute: ({ amps, stages, hertz, farads }) => {
    const step = amps / (hertz * farads);
    return { sagVolts: step * ((2 * stages ** 3) / 3 + stages ** 2 / 2 - stages / 6), rippleVolts: (step * stages * (stages + 1)) / 2 };
  },
});
