import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Pi network from plate load to antenna: X1 = R1/Q; X2 = R2 sqrt((R1/R2)/(Q^2 + 1 - R1/R2)); XL = (Q R1 + R1 R2/X2)/(Q^2 + 1).
 * SI base units in and out; FormulaError outside the limits.
 */
export const piNetwork = defineFormula({
  id: "pi-network",
  area: "rf",
  title: "Pi network from plate load to antenna",
  expression: "X1 = R1/Q; X2 = R2 sqrt((R1/R2)/(Q^2 + 1 - R1/R2)); XL = (Q R1 + R1 R2/X2)/(Q^2 + 1)",
  inputs: {
    plateOhms: { symbol: "R1", dimension: "resistance", meaning: "plate load", above: 0 },
    antennaOhms: { symbol: "R2", dimension: "resistance", meaning: "antenna resistance", above: 0 },
    q: { symbol: "Q", dimension: "ratio", meaning: "loaded Q of the input side", above: 0, default: 12 },
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency", above: 0 },
  },
  outputs: {
    inputReactanceOhms: { symbol: "X1", dimension: "resistance", meaning: "reactance of the tuning capacitor" },
    outputReactanceOhms: { symbol: "X2", dimension: "resistance", meaning: "reactance of the loading capacitor" },
    coilReactanceOhms: { symbol: "XL", dimension: "resistance", meaning: "reactance of the coil" },
    inputFarads: { symbol: "C1", dimension: "capacitance", meaning: "tuning capacitor" },
    outputFarads: { symbol: "C2", dimension: "capacitance", meaning: "loading capacitor" },
    henries: { symbol: "L", dimension: "inductance", meaning: "coil" },
  },
  limits: "Resistive antenna, lossless parts; Q^2 + 1 above R1/R2, and R1 above R2.",
  source: "from-memory",
  compute: ({ plateOhms, antennaOhms, q, hertz }) => {
    const ratio = plateOhms / antennaOhms;
    requireThat(ratio >= 1, "antennaOhms", antennaOhms, "must not be above plateOhms");
    requireThat(q ** 2 + 1 > ratio, "q", q, "must be so high that Q^2 + 1 exceeds plateOhms/antennaOhms");
    const omega = 2 * Math.PI * hertz;
    const inputReactanceOhms = plateOhms / q;
    const outputReactanceOhms = antennaOhms * Math.sqrt(ratio / (q ** 2 + 1 - ratio));
    const coilReactanceOhms = (q * plateOhms + (plateOhms * antennaOhms) / outputReactanceOhms) / (q ** 2 + 1);
    return {
      inputReactanceOhms,
      outputReactanceOhms,
      coilReactanceOhms,
      inputFarads: 1 / (omega * inputReactanceOhms),
      outputFarads: 1 / (omega * outputReactanceOhms),
      henries: coilReactanceOhms / omega,
    };
  },
});
