import { defineFormula } from "../defineFormula.ts";

/**
 * Power balance of a transmitting stage: Pin = Vp Ip; Po = eta Pin; Pp = Pin - Po.
 * SI base units in and out; FormulaError outside the limits.
 */
export const rfPowerBalance = defineFormula({
  id: "rf-power-balance",
  area: "tubes",
  title: "Power balance of a transmitting stage",
  expression: "Pin = Vp Ip; Po = eta Pin; Pp = Pin - Po",
  inputs: {
    plateVolts: { symbol: "Vp", dimension: "voltage", meaning: "plate voltage", above: 0 },
    plateAmps: { symbol: "Ip", dimension: "current", meaning: "plate current", minimum: 0 },
    efficiency: {
      symbol: "eta",
      dimension: "ratio",
      meaning: "plate efficiency; 60 to 75 % in class C",
      minimum: 0,
      maximum: 1,
      default: 0.7,
    },
  },
  outputs: {
    inputWatts: { symbol: "Pin", dimension: "power", meaning: "plate input" },
    outputWatts: { symbol: "Po", dimension: "power", meaning: "output" },
    plateWatts: { symbol: "Pp", dimension: "power", meaning: "plate dissipation" },
  },
  limits: "Tank losses count as output here.",
  source: "from-memory",
  compute: ({ plateVolts, plateAmps, efficiency }) => {
    const inputWatts = plateVolts * plateAmps;
    return { inputWatts, outputWatts: efficiency * inputWatts, plateWatts: (1 - efficiency) * inputWatts };
  },
});
