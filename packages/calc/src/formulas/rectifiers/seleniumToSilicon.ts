import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Resistor that keeps B+ when silicon replaces selenium: R = (Vsel - Vsi)/I; P = I^2 R.
 * SI base units in and out; FormulaError outside the limits.
 */
export const seleniumToSilicon = defineFormula({
  id: "selenium-to-silicon",
  area: "rectifiers",
  title: "Resistor that keeps B+ when silicon replaces selenium",
  expression: "R = (Vsel - Vsi)/I; P = I^2 R",
  inputs: {
    seleniumVolts: { symbol: "Vsel", dimension: "voltage", meaning: "forward drop of the selenium stack", above: 0 },
    siliconVolts: { symbol: "Vsi", dimension: "voltage", meaning: "forward drop of the silicon diode", minimum: 0, default: 1 },
    amps: { symbol: "I", dimension: "current", meaning: "direct load current", above: 0 },
  },
  outputs: {
    ohms: { symbol: "R", dimension: "resistance", meaning: "resistor in series" },
    watts: { symbol: "P", dimension: "power", meaning: "heat by the direct current alone" },
  },
  limits: "By average current: the charging pulses heat the resistor more, so rate it at three times the watts at least.",
  source: "selenium-text",
  compute: ({ seleniumVolts, siliconVolts, amps }) => {
    requireThat(seleniumVolts > siliconVolts, "seleniumVolts", seleniumVolts, "must be above siliconVolts");
    return { ohms: (seleniumVolts - siliconVolts) / amps, watts: (seleniumVolts - siliconVolts) * amps };
  },
});
