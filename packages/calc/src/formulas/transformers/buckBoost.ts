import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Line with a low-voltage winding in series: V' = V - Vw (buck), V + Vw (boost); S = Vw I.
 * SI base units in and out; FormulaError outside the limits.
 */
export const buckBoost = defineFormula({
  id: "buck-boost",
  area: "transformers",
  title: "Line with a low-voltage winding in series",
  expression: "V' = V - Vw (buck), V + Vw (boost); S = Vw I",
  inputs: {
    lineVolts: { symbol: "V", dimension: "voltage", meaning: "line voltage", above: 0 },
    windingVolts: { symbol: "Vw", dimension: "voltage", meaning: "voltage of the winding", minimum: 0 },
    loadAmps: { symbol: "I", dimension: "current", meaning: "load current", minimum: 0, default: 0 },
  },
  outputs: {
    buckedVolts: { symbol: "Vb", dimension: "voltage", meaning: "winding against the line" },
    boostedVolts: { symbol: "Va", dimension: "voltage", meaning: "winding with the line" },
    voltAmperes: { symbol: "S", dimension: "power", meaning: "what the small transformer carries" },
  },
  limits:
    "Winding rated for the whole load current, and insulated for the line. The winding stays below the line voltage. Line wiring is for those whom the local code lets do it.",
  source: "lessons-ac",
  compute: ({ lineVolts, windingVolts, loadAmps }) => {
    requireThat(windingVolts < lineVolts, "windingVolts", windingVolts, "must be below lineVolts");
    return { buckedVolts: lineVolts - windingVolts, boostedVolts: lineVolts + windingVolts, voltAmperes: windingVolts * loadAmps };
  },
});
