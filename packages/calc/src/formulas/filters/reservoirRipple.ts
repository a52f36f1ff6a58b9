import { defineFormula } from "../defineFormula.ts";

/**
 * Ripple of a capacitor-input filter: Vpp = I/(fr C); Vrms = Vpp/(2 sqrt(3)) sawtooth, Vpp/(2 sqrt(2)) if taken for a sine.
 * SI base units in and out; FormulaError outside the limits.
 */
export const reservoirRipple = defineFormula({
  id: "reservoir-ripple",
  area: "filters",
  title: "Ripple of a capacitor-input filter",
  expression: "Vpp = I/(fr C); Vrms = Vpp/(2 sqrt(3)) sawtooth, Vpp/(2 sqrt(2)) if taken for a sine",
  inputs: {
    amps: { symbol: "I", dimension: "current", meaning: "direct load current", minimum: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "reservoir capacitor", above: 0 },
    lineHertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
    pulses: {
      symbol: "p",
      dimension: "ratio",
      meaning: "charging pulses in a cycle: 1 half wave, 2 full wave",
      minimum: 1,
      maximum: 2,
      whole: true,
      default: 2,
    },
  },
  outputs: {
    peakToPeakVolts: { symbol: "Vpp", dimension: "voltage", meaning: "ripple, peak to peak" },
    sawtoothRmsVolts: { symbol: "Vr", dimension: "voltage", meaning: "RMS of that ripple as a sawtooth" },
    sineRmsVolts: { symbol: "Vs", dimension: "voltage", meaning: "RMS if it were a sine" },
    sagVolts: { symbol: "dV", dimension: "voltage", meaning: "what the average lies below the peak, Vpp/2" },
  },
  limits:
    "The capacitor discharges all through the cycle at constant current: too high by the charging time, right for ripple small beside the voltage.",
  source: "neets-module-6",
  compute: ({ amps, farads, lineHertz, pulses }) => {
    const peakToPeakVolts = amps / (pulses * lineHertz * farads);
    return {
      peakToPeakVolts,
      sawtoothRmsVolts: peakToPeakVolts / (2 * Math.sqrt(3)),
      sineRmsVolts: peakToPeakVolts / (2 * Math.SQRT2),
      sagVolts: peakToPeakVolts / 2,
    };
  },
});
