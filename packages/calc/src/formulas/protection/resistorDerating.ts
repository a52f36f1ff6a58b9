import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Power of a resistor at a higher ambient temperature: P = Pr (Tmax - T)/(Tmax - Tr).
 * SI base units in and out; FormulaError outside the limits.
 */
export const resistorDerating = defineFormula({
  id: "resistor-derating",
  area: "protection",
  title: "Power of a resistor at a higher ambient temperature",
  expression: "P = Pr (Tmax - T)/(Tmax - Tr)",
  inputs: {
    ratedWatts: { symbol: "Pr", dimension: "power", meaning: "rating", above: 0 },
    ambient: { symbol: "T", dimension: "temperature", meaning: "ambient temperature", minimum: 200, maximum: 800 },
    ratedTemperature: {
      symbol: "Tr",
      dimension: "temperature",
      meaning: "temperature up to which the whole rating holds; 70 degC for most film types",
      minimum: 200,
      maximum: 800,
      default: 343.15,
    },
    zeroTemperature: {
      symbol: "Tmax",
      dimension: "temperature",
      meaning: "temperature at which nothing is left",
      minimum: 200,
      maximum: 800,
    },
  },
  outputs: {
    watts: { symbol: "P", dimension: "power", meaning: "power allowed" },
  },
  limits: "Straight line; still air. The ambient lies at most at the zero point, the rated temperature below it.",
  source: "film-resistor-sheets",
  compute: ({ ratedWatts, ambient, ratedTemperature, zeroTemperature }) => {
    requireThat(ratedTemperature < zeroTemperature, "ratedTemperature", ratedTemperature, "must be below zeroTemperature");
    requireThat(ambient <= zeroTemperature, "ambient", ambient, "must not be above zeroTemperature");
    return { watts: ratedWatts * Math.min(1, (zeroTemperature - ambient) / (zeroTemperature - ratedTemperature)) };
  },
});
