import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Voltmeter multiplier: Rx = V/Ifs - Rm. SI base units in and out; FormulaError outside the limits. */
export const meterMultiplier = defineFormula({
  id: "meter-multiplier",
  area: "meters",
  title: "Voltmeter multiplier",
  expression: "Rx = V/Ifs - Rm",
  inputs: {
    fullScaleVolts: { symbol: "V", dimension: "voltage", meaning: "range wanted", above: 0 },
    fullScaleAmps: { symbol: "Ifs", dimension: "current", meaning: "full-scale current of the movement", above: 0 },
    movementOhms: { symbol: "Rm", dimension: "resistance", meaning: "resistance of the movement", minimum: 0 },
  },
  outputs: {
    ohms: { symbol: "Rx", dimension: "resistance", meaning: "multiplier resistor" },
    ohmsPerVolt: { symbol: "S", dimension: "ohms-per-volt", meaning: "ohms for each volt of range" },
    inputOhms: { symbol: "Rv", dimension: "resistance", meaning: "resistance of the whole voltmeter" },
  },
  limits: "Direct current; the range must not lie below what the bare movement reads.",
  source: "lessons-dc",
  compute: ({ fullScaleVolts, fullScaleAmps, movementOhms }) => {
    const inputOhms = fullScaleVolts / fullScaleAmps;
    requireThat(inputOhms >= movementOhms, "fullScaleVolts", fullScaleVolts, "must not be below fullScaleAmps times movementOhms");
    return { ohms: inputOhms - movementOhms, ohmsPerVolt: 1 / fullScaleAmps, inputOhms };
  },
});
