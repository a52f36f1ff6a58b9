import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Series ohmmeter: Rz = E/Ifs - Rm; half scale at Rx = E/Ifs. SI base units in and out; FormulaError outside the limits. */
export const seriesOhmmeter = defineFormula({
  id: "series-ohmmeter",
  area: "meters",
  title: "Series ohmmeter",
  expression: "Rz = E/Ifs - Rm; half scale at Rx = E/Ifs",
  inputs: {
    batteryVolts: { symbol: "E", dimension: "voltage", meaning: "battery", above: 0 },
    fullScaleAmps: { symbol: "Ifs", dimension: "current", meaning: "full-scale current of the movement", above: 0 },
    movementOhms: { symbol: "Rm", dimension: "resistance", meaning: "resistance of the movement", minimum: 0 },
    unknownOhms: { symbol: "Rx", dimension: "resistance", meaning: "resistance under test", minimum: 0, open: true, default: 0 },
  },
  outputs: {
    zeroOhms: { symbol: "Rz", dimension: "resistance", meaning: "resistor that sets full scale with the prods together" },
    halfScaleOhms: { symbol: "Rh", dimension: "resistance", meaning: "unknown that gives half scale" },
    deflection: { symbol: "d", dimension: "ratio", meaning: "share of full scale that the unknown gives" },
  },
  limits: "Fresh battery: the zero adjuster follows its decline, the scale does so only near zero.",
  source: "lessons-dc",
  compute: ({ batteryVolts, fullScaleAmps, movementOhms, unknownOhms }) => {
    const total = batteryVolts / fullScaleAmps;
    requireThat(total >= movementOhms, "batteryVolts", batteryVolts, "must not be below fullScaleAmps times movementOhms");
    return { zeroOhms: total - movementOhms, halfScaleOhms: total, deflection: total / (total + unknownOhms) };
  },
});
