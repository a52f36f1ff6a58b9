import { defineFormula } from "../defineFormula.ts";

/**
 * Leakage limit of an electrolytic capacitor: I(mA) = K C(uF) + 0.3; K = 0.01 to 100 V, 0.02 to 250 V, 0.025 to 350 V, 0.04 to 500 V.
 * SI base units in and out; FormulaError outside the limits.
 */
export const electrolyticLeakageLimit = defineFormula({
  id: "electrolytic-leakage-limit",
  area: "protection",
  title: "Leakage limit of an electrolytic capacitor",
  expression: "I(mA) = K C(uF) + 0.3; K = 0.01 to 100 V, 0.02 to 250 V, 0.025 to 350 V, 0.04 to 500 V",
  inputs: {
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance", above: 0 },
    ratedVolts: { symbol: "Vr", dimension: "voltage", meaning: "rated voltage", above: 0, maximum: 500 },
  },
  outputs: {
    jointLimitAmps: { symbol: "I", dimension: "current", meaning: "limit of the joint army-navy rule" },
    modernLimitAmps: { symbol: "Im", dimension: "current", meaning: "limit of modern small parts, 0.01 C V or 3 uA" },
  },
  limits: "At rated voltage and 20 degC, after some minutes. Ratings up to 500 V.",
  source: "jan-c-62",
  compute: ({ farads, ratedVolts }) => {
    const factor = ratedVolts <= 100 ? 0.01 : ratedVolts <= 250 ? 0.02 : ratedVolts <= 350 ? 0.025 : 0.04;
    return { jointLimitAmps: (factor * farads * 1e6 + 0.3) * 1e-3, modernLimitAmps: Math.max(3e-6, 0.01 * farads * ratedVolts) };
  },
});
