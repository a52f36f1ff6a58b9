import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Largest resistor that discharges a line capacitor in time: R = t/(C ln(sqrt(2) Vrms/V1)).
 * SI base units in and out; FormulaError outside the limits.
 */
export const dischargeResistor = defineFormula({
  id: "discharge-resistor",
  area: "protection",
  title: "Largest resistor that discharges a line capacitor in time",
  expression: "R = t/(C ln(sqrt(2) Vrms/V1))",
  inputs: {
    rmsVolts: { symbol: "Vrms", dimension: "voltage", meaning: "line voltage, RMS", above: 0 },
    limitVolts: { symbol: "V1", dimension: "voltage", meaning: "voltage to be reached", above: 0 },
    seconds: { symbol: "t", dimension: "time", meaning: "time allowed", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "all capacitance across the plug", above: 0 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "largest resistor" },
    watts: { symbol: "P", dimension: "power", meaning: "heat in it at that line voltage" },
  },
  limits:
    "Unplugged at the crest; the limit lies below the crest. The resistor must itself stand the line, on the plug's side of any switch.",
  source: "circuit-theory",
  compute: ({ rmsVolts, limitVolts, seconds, farads }) => {
    const crest = Math.SQRT2 * rmsVolts;
    requireThat(limitVolts < crest, "limitVolts", limitVolts, "must be below the crest of the line");
    const ohms = seconds / (farads * Math.log(crest / limitVolts));
    return { ohms, watts: rmsVolts ** 2 / ohms };
  },
});
