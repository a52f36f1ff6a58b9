import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Capacitor that drops the line for a heater string: C = Ih/(2 pi f sqrt(E^2 - Vh^2)).
 * SI base units in and out; FormulaError outside the limits.
 */
export const heaterCapacitor = defineFormula({
  id: "heater-capacitor",
  area: "transformers",
  title: "Capacitor that drops the line for a heater string",
  expression: "C = Ih/(2 pi f sqrt(E^2 - Vh^2))",
  inputs: {
    lineVolts: { symbol: "E", dimension: "voltage", meaning: "line voltage, RMS", above: 0 },
    heaterVolts: { symbol: "Vh", dimension: "voltage", meaning: "all heaters together", above: 0 },
    heaterAmps: { symbol: "Ih", dimension: "current", meaning: "current of the string", above: 0 },
    hertz: { symbol: "f", dimension: "frequency", meaning: "line frequency", above: 0 },
  },
  outputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor" },
    capacitorVolts: { symbol: "Vc", dimension: "voltage", meaning: "RMS voltage across it" },
  },
  limits: "Film capacitor of an across-the-line class, bleeder across it; the heaters want less than the line.",
  source: "from-memory",
  compute: ({ lineVolts, heaterVolts, heaterAmps, hertz }) => {
    requireThat(heaterVolts < lineVolts, "heaterVolts", heaterVolts, "must be below lineVolts");
    const capacitorVolts = Math.sqrt(lineVolts ** 2 - heaterVolts ** 2);
    return { farads: heaterAmps / (2 * Math.PI * hertz * capacitorVolts), capacitorVolts };
  },
});
