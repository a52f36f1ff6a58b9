import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";
import { sumOf } from "../sumOf.ts";

/**
 * Volt-amperes and primary current of a transformer: S = V1 I1 + V2 I2 + ...; Ip = S/(eta Vp).
 * SI base units in and out; FormulaError outside the limits.
 */
export const voltAmperes = defineFormula({
  id: "volt-amperes",
  area: "transformers",
  title: "Volt-amperes and primary current of a transformer",
  expression: "S = V1 I1 + V2 I2 + ...; Ip = S/(eta Vp)",
  inputs: {
    secondaryVolts: { symbol: "Vn", dimension: "voltage", meaning: "voltage of each secondary", minimum: 0, list: true },
    secondaryAmps: { symbol: "In", dimension: "current", meaning: "RMS current of each, in the same order", minimum: 0, list: true },
    primaryVolts: { symbol: "Vp", dimension: "voltage", meaning: "primary voltage", above: 0 },
    efficiency: { symbol: "eta", dimension: "ratio", meaning: "efficiency", above: 0, maximum: 1, default: 1 },
  },
  outputs: {
    voltAmperes: { symbol: "S", dimension: "power", meaning: "volt-amperes of all secondaries" },
    primaryAmps: { symbol: "Ip", dimension: "current", meaning: "primary current" },
  },
  limits: "RMS currents: a capacitor-input winding carries 1.6 to 1.8 times the direct current. As many currents as voltages.",
  source: "circuit-theory",
  compute: ({ secondaryVolts, secondaryAmps, primaryVolts, efficiency }) => {
    requireThat(
      secondaryVolts.length === secondaryAmps.length,
      "secondaryAmps",
      secondaryAmps[0] ?? 0,
      "must be as many as secondaryVolts",
    );
    const voltAmperes = sumOf(secondaryVolts.map((volts, index) => volts * (secondaryAmps[index] ?? 0)));
    return { voltAmperes, primaryAmps: voltAmperes / (efficiency * primaryVolts) };
  },
});
