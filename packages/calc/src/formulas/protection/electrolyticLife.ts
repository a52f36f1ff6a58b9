import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Life of an electrolytic capacitor by temperature: L = L0 2^((T0 - T)/10 K).
 * SI base units in and out; FormulaError outside the limits.
 */
export const electrolyticLife = defineFormula({
  id: "electrolytic-life",
  area: "protection",
  title: "Life of an electrolytic capacitor by temperature",
  expression: "L = L0 2^((T0 - T)/10 K)",
  inputs: {
    ratedLife: { symbol: "L0", dimension: "time", meaning: "life at the rated temperature", above: 0 },
    ratedTemperature: { symbol: "T0", dimension: "temperature", meaning: "rated temperature", minimum: 273.15, maximum: 450 },
    temperature: {
      symbol: "T",
      dimension: "temperature",
      meaning: "temperature of the can, ripple heating included",
      minimum: 313.15,
      maximum: 450,
    },
  },
  outputs: {
    life: { symbol: "L", dimension: "time", meaning: "life" },
  },
  limits: "From 40 degC up to the rated temperature; makers stop at about 15 years. The ripple's heating is part of the temperature.",
  source: "from-memory",
  compute: ({ ratedLife, ratedTemperature, temperature }) => {
    requireThat(temperature <= ratedTemperature, "temperature", temperature, "must not be above ratedTemperature");
    return { life: ratedLife * 2 ** ((ratedTemperature - temperature) / 10) };
  },
});
