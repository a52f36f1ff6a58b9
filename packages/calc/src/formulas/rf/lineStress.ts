import { defineFormula } from "../defineFormula.ts";

/**
 * Stress of capacitors and switch contacts on a mismatched line: Vpk = sqrt(2 P Z0 S); Irms = sqrt(P S/Z0).
 * SI base units in and out; FormulaError outside the limits.
 */
export const lineStress = defineFormula({
  id: "line-stress",
  area: "rf",
  title: "Stress of capacitors and switch contacts on a mismatched line",
  expression: "Vpk = sqrt(2 P Z0 S); Irms = sqrt(P S/Z0)",
  inputs: {
    watts: { symbol: "P", dimension: "power", meaning: "net power, the peak envelope for voltages", minimum: 0 },
    lineOhms: { symbol: "Z0", dimension: "resistance", meaning: "characteristic impedance", above: 0 },
    swr: { symbol: "S", dimension: "ratio", meaning: "standing-wave ratio", minimum: 1, maximum: 1000 },
  },
  outputs: {
    peakVolts: { symbol: "Vpk", dimension: "voltage", meaning: "highest peak voltage on the line" },
    rmsAmps: { symbol: "Irms", dimension: "current", meaning: "highest RMS current on the line" },
    highOhms: { symbol: "Rmax", dimension: "resistance", meaning: "resistance at the voltage maximum" },
    lowOhms: { symbol: "Rmin", dimension: "resistance", meaning: "resistance at the current maximum" },
  },
  limits: "The worst place on a lossless line; where the part sits may be milder. Take a margin of two for the capacitor's gap.",
  source: "circuit-theory",
  compute: ({ watts, lineOhms, swr }) => {
    return {
      peakVolts: Math.sqrt(2 * watts * lineOhms * swr),
      rmsAmps: Math.sqrt((watts * swr) / lineOhms),
      highOhms: lineOhms * swr,
      lowOhms: lineOhms / swr,
    };
  },
});
