import { defineFormula } from "../defineFormula.ts";

/** Current through a capacitor on the line: I = 2 pi f C V. SI base units in and out; FormulaError outside the limits. */
export const lineCapacitorCurrent = defineFormula({
  id: "line-capacitor-current",
  area: "protection",
  title: "Current through a capacitor on the line",
  expression: "I = 2 pi f C V",
  inputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance; nominal plus its tolerance for a verdict", minimum: 0 },
    volts: { symbol: "V", dimension: "voltage", meaning: "RMS line voltage, the highest for a verdict", minimum: 0 },
    hertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
  },
  outputs: {
    amps: { symbol: "I", dimension: "current", meaning: "RMS current, which is the touch current where it ends at exposed metal" },
  },
  limits: "Pure sine: harmonics add to it. A leaky capacitor passes more.",
  source: "lessons-ac",
  compute: ({ farads, volts, hertz }) => ({ amps: 2 * Math.PI * hertz * farads * volts }),
});
