import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Plate-modulated stage: Zm = Vp/Ip; Pa = m^2 Pin/2; Vcrest = (1 + m) Vp. SI base units in and out; FormulaError outside the limits. */
export const plateModulation = defineFormula({
  id: "plate-modulation",
  area: "tubes",
  title: "Plate-modulated stage",
  expression: "Zm = Vp/Ip; Pa = m^2 Pin/2; Vcrest = (1 + m) Vp",
  inputs: {
    plateVolts: { symbol: "Vp", dimension: "voltage", meaning: "plate voltage", above: 0 },
    plateAmps: { symbol: "Ip", dimension: "current", meaning: "plate current, with the screen's if it is modulated too", above: 0 },
    modulation: { symbol: "m", dimension: "ratio", meaning: "modulation index", minimum: 0, maximum: 1, default: 1 },
    carrierWatts: { symbol: "Pc", dimension: "power", meaning: "carrier output", minimum: 0, default: 0 },
  },
  outputs: {
    modulatorLoadOhms: { symbol: "Zm", dimension: "resistance", meaning: "load that the modulator sees" },
    audioWatts: { symbol: "Pa", dimension: "power", meaning: "audio power, sine" },
    crestVolts: { symbol: "Vc", dimension: "voltage", meaning: "plate voltage at the crest, before radio frequency on top" },
    plateWatts: { symbol: "Pp", dimension: "power", meaning: "dissipation if the output stayed at the carrier" },
  },
  limits: "Sine modulation, plate current in proportion to plate voltage. Carrier output not above the input.",
  source: "circuit-theory",
  compute: ({ plateVolts, plateAmps, modulation, carrierWatts }) => {
    const inputWatts = plateVolts * plateAmps;
    requireThat(carrierWatts <= inputWatts, "carrierWatts", carrierWatts, "must not be above the plate input");
    const audioWatts = (modulation ** 2 * inputWatts) / 2;
    return {
      modulatorLoadOhms: plateVolts / plateAmps,
      audioWatts,
      crestVolts: (1 + modulation) * plateVolts,
      plateWatts: inputWatts + audioWatts - carrierWatts,
    };
  },
});
