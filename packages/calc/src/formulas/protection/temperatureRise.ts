import { defineFormula } from "../defineFormula.ts";

/** Temperature of a part from its heat: T = Ta + Rth P. SI base units in and out; FormulaError outside the limits. */
export const temperatureRise = defineFormula({
  id: "temperature-rise",
  area: "protection",
  title: "Temperature of a part from its heat",
  expression: "T = Ta + Rth P",
  inputs: {
    watts: { symbol: "P", dimension: "power", meaning: "heat", minimum: 0 },
    kelvinsPerWatt: {
      symbol: "Rth",
      dimension: "thermal-resistance",
      meaning: "thermal resistance to the air, kelvins for each watt",
      minimum: 0,
    },
    ambient: { symbol: "Ta", dimension: "temperature", meaning: "ambient temperature", minimum: 200, maximum: 800 },
  },
  outputs: {
    temperature: { symbol: "T", dimension: "temperature", meaning: "temperature of the body" },
    rise: { symbol: "dT", dimension: "temperature-difference", meaning: "rise" },
  },
  limits: "Steady state, still air.",
  source: "film-resistor-sheets",
  compute: ({ watts, kelvinsPerWatt, ambient }) => ({ temperature: ambient + kelvinsPerWatt * watts, rise: kelvinsPerWatt * watts }),
});
