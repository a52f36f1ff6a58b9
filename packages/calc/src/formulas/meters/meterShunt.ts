import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Ammeter shunt: Rs = Ifs Rm/(I - Ifs). SI base units in and out; FormulaError outside the limits. */
export const meterShunt = defineFormula({
  id: "meter-shunt",
  area: "meters",
  title: "Ammeter shunt",
  expression: "Rs = Ifs Rm/(I - Ifs)",
  inputs: {
    fullScaleAmps: { symbol: "Ifs", dimension: "current", meaning: "full-scale current of the movement", above: 0 },
    movementOhms: { symbol: "Rm", dimension: "resistance", meaning: "resistance of the movement", above: 0 },
    rangeAmps: { symbol: "I", dimension: "current", meaning: "range wanted", above: 0 },
  },
  outputs: {
    ohms: { symbol: "Rs", dimension: "resistance", meaning: "shunt across the movement" },
    burdenVolts: { symbol: "V", dimension: "voltage", meaning: "drop of the shunted meter at full scale" },
  },
  limits: "Direct current; the range lies above the movement's own.",
  source: "lessons-dc",
  compute: ({ fullScaleAmps, movementOhms, rangeAmps }) => {
    requireThat(rangeAmps > fullScaleAmps, "rangeAmps", rangeAmps, "must be above fullScaleAmps");
    return { ohms: (fullScaleAmps * movementOhms) / (rangeAmps - fullScaleAmps), burdenVolts: fullScaleAmps * movementOhms };
  },
});
