import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Dissipation of a plate or screen: P = (V - Vk) I. SI base units in and out; FormulaError outside the limits. */
export const electrodeDissipation = defineFormula({
  id: "electrode-dissipation",
  area: "tubes",
  title: "Dissipation of a plate or screen",
  expression: "P = (V - Vk) I",
  inputs: {
    volts: { symbol: "V", dimension: "voltage", meaning: "plate or screen to ground" },
    cathodeVolts: { symbol: "Vk", dimension: "voltage", meaning: "cathode to ground", default: 0 },
    amps: { symbol: "I", dimension: "current", meaning: "its current", minimum: 0 },
    ratedWatts: { symbol: "Pmax", dimension: "power", meaning: "rating", above: 0, default: 1 },
  },
  outputs: {
    watts: { symbol: "P", dimension: "power", meaning: "dissipation" },
    share: { symbol: "s", dimension: "ratio", meaning: "share of the rating" },
  },
  limits: "No signal, direct current; the electrode lies above the cathode.",
  source: "circuit-theory",
  compute: ({ volts, cathodeVolts, amps, ratedWatts }) => {
    requireThat(volts >= cathodeVolts, "volts", volts, "must not be below cathodeVolts");
    const watts = (volts - cathodeVolts) * amps;
    return { watts, share: watts / ratedWatts };
  },
});
