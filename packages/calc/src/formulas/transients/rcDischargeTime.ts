import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Time to discharge a capacitor: t = R C ln(V0/V1). SI base units in and out; FormulaError outside the limits. */
export const rcDischargeTime = defineFormula({
  id: "rc-discharge-time",
  area: "transients",
  title: "Time to discharge a capacitor",
  expression: "t = R C ln(V0/V1)",
  inputs: {
    startVolts: { symbol: "V0", dimension: "voltage", meaning: "voltage at the start", above: 0 },
    endVolts: { symbol: "V1", dimension: "voltage", meaning: "voltage to reach", above: 0 },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistor", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor", above: 0 },
  },
  outputs: {
    seconds: { symbol: "t", dimension: "time", meaning: "time" },
  },
  limits: "The end voltage lies below the start. Dielectric absorption brings some of the voltage back: measure before touching.",
  source: "capacitor-discharge-sheet",
  compute: ({ startVolts, endVolts, ohms, farads }) => {
    requireThat(endVolts < startVolts, "endVolts", endVolts, "must be below startVolts");
    return { seconds: ohms * farads * Math.log(startVolts / endVolts) };
  },
});
