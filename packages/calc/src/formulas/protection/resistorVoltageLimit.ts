import { defineFormula } from "../defineFormula.ts";

/** Highest voltage of a resistor: V = min(Vmax, sqrt(P R)); Rc = Vmax^2/P. SI base units in and out; FormulaError outside the limits. */
export const resistorVoltageLimit = defineFormula({
  id: "resistor-voltage-limit",
  area: "protection",
  title: "Highest voltage of a resistor",
  expression: "V = min(Vmax, sqrt(P R)); Rc = Vmax^2/P",
  inputs: {
    ratedWatts: { symbol: "P", dimension: "power", meaning: "rating", above: 0 },
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistance", above: 0 },
    limitVolts: { symbol: "Vmax", dimension: "voltage", meaning: "limiting element voltage of its size", above: 0 },
  },
  outputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "highest continuous voltage, direct or RMS" },
    criticalOhms: { symbol: "Rc", dimension: "resistance", meaning: "resistance above which the voltage limit rules" },
  },
  limits: "Continuous; pulses have limits of their own.",
  source: "film-resistor-sheets",
  compute: ({ ratedWatts, ohms, limitVolts }) => ({
    volts: Math.min(limitVolts, Math.sqrt(ratedWatts * ohms)),
    criticalOhms: limitVolts ** 2 / ratedWatts,
  }),
});
