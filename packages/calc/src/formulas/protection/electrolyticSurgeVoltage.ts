import { defineFormula } from "../defineFormula.ts";

/**
 * Surge voltage of an electrolytic capacitor: Vs = 1.15 Vr to 315 V, 1.10 Vr above.
 * SI base units in and out; FormulaError outside the limits.
 */
export const electrolyticSurgeVoltage = defineFormula({
  id: "electrolytic-surge-voltage",
  area: "protection",
  title: "Surge voltage of an electrolytic capacitor",
  expression: "Vs = 1.15 Vr to 315 V, 1.10 Vr above",
  inputs: {
    ratedVolts: { symbol: "Vr", dimension: "voltage", meaning: "rated voltage", above: 0, maximum: 700 },
  },
  outputs: {
    surgeVolts: { symbol: "Vs", dimension: "voltage", meaning: "surge voltage" },
  },
  limits: "Modern parts, for seconds at a time. Old cans have the surge voltage printed on them.",
  source: "from-memory",
  compute: ({ ratedVolts }) => ({ surgeVolts: (ratedVolts <= 315 ? 1.15 : 1.1) * ratedVolts }),
});
