import { defineFormula } from "../defineFormula.ts";

/**
 * Touch current from the voltage across the service network: I = V/|R||1/(2 pi f C)|.
 * SI base units in and out; FormulaError outside the limits.
 */
export const touchCurrentReading = defineFormula({
  id: "touch-current-reading",
  area: "protection",
  title: "Touch current from the voltage across the service network",
  expression: "I = V/|R||1/(2 pi f C)|",
  inputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "RMS voltage across the network", minimum: 0 },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistor of the network", above: 0, default: 1500 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor across it", minimum: 0, default: 0.15e-6 },
    hertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0, default: 60 },
  },
  outputs: {
    amps: { symbol: "I", dimension: "current", meaning: "touch current" },
    impedanceOhms: { symbol: "Z", dimension: "resistance", meaning: "impedance of the network" },
  },
  limits: "Sine; between each exposed metal part and earth, plug turned both ways.",
  source: "service-leakage-check",
  compute: ({ volts, ohms, farads, hertz }) => {
    const impedanceOhms = ohms / Math.hypot(1, 2 * Math.PI * hertz * ohms * farads);
    return { amps: volts / impedanceOhms, impedanceOhms };
  },
});
