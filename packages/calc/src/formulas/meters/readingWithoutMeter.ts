import { defineFormula } from "../defineFormula.ts";

/** Voltage before a meter was put there: V = V' (1 + Rs/Rv). SI base units in and out; FormulaError outside the limits. */
export const readingWithoutMeter = defineFormula({
  id: "reading-without-meter",
  area: "meters",
  title: "Voltage before a meter was put there",
  expression: "V = V' (1 + Rs/Rv)",
  inputs: {
    shownVolts: { symbol: "V'", dimension: "voltage", meaning: "what the meter shows" },
    sourceOhms: { symbol: "Rs", dimension: "resistance", meaning: "resistance that the meter sees", minimum: 0 },
    meterOhms: { symbol: "Rv", dimension: "resistance", meaning: "resistance of the meter", above: 0, open: true },
  },
  outputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "voltage without the meter" },
  },
  limits: "A linear source: the plate of a tube under load is one only for small changes.",
  source: "lessons-dc",
  compute: ({ shownVolts, sourceOhms, meterOhms }) => ({ volts: shownVolts * (1 + sourceOhms / meterOhms) }),
});
