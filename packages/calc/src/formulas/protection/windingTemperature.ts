import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Temperature rise of a copper winding by its resistance: dT = (R2/R1 - 1)(234.5 + T1) - (Ta - T1), degC.
 * SI base units in and out; FormulaError outside the limits.
 */
export const windingTemperature = defineFormula({
  id: "winding-temperature",
  area: "protection",
  title: "Temperature rise of a copper winding by its resistance",
  expression: "dT = (R2/R1 - 1)(234.5 + T1) - (Ta - T1), degC",
  inputs: {
    coldOhms: { symbol: "R1", dimension: "resistance", meaning: "resistance when cold", above: 0 },
    hotOhms: { symbol: "R2", dimension: "resistance", meaning: "resistance when hot", above: 0 },
    coldTemperature: { symbol: "T1", dimension: "temperature", meaning: "temperature when cold", minimum: 233.15, maximum: 373.15 },
    ambient: { symbol: "Ta", dimension: "temperature", meaning: "ambient when hot", minimum: 233.15, maximum: 373.15 },
  },
  outputs: {
    rise: { symbol: "dT", dimension: "temperature-difference", meaning: "rise above the ambient" },
    temperature: { symbol: "T", dimension: "temperature", meaning: "average temperature of the winding" },
  },
  limits: "Copper; read at once after switching off. The hot resistance is not below the cold one.",
  source: "from-memory",
  compute: ({ coldOhms, hotOhms, coldTemperature, ambient }) => {
    requireThat(hotOhms >= coldOhms, "hotOhms", hotOhms, "must not be below coldOhms");
    // 234.5 degC below nought a copper winding would have no resistance on the straight line.
    const temperature = (hotOhms / coldOhms) * (coldTemperature - 273.15 + 234.5) - 234.5 + 273.15;
    return { temperature, rise: temperature - ambient };
  },
});
