import type { Dimension } from "../quantities/index.ts";

/** Dimensions that the formulas need beside those of parts and readings. */
export type DerivedDimension =
  | "level"
  | "angle"
  | "melting-integral"
  | "perveance"
  | "capacitance-per-length"
  | "inductance-per-length"
  | "inductance-per-turn-squared"
  | "resistivity"
  | "temperature-difference"
  | "thermal-resistance"
  | "ohms-per-volt";

export type FormulaDimension = Dimension | DerivedDimension;

/** Units of a derived dimension: spelling and its size in the SI unit, the one to print in first. */
export const derivedUnits: Readonly<Record<DerivedDimension, readonly (readonly [string, number])[]>> = {
  level: [
    ["dB", 1],
    ["dBm", 1],
    ["dBi", 1],
    ["dBd", 1],
  ],
  angle: [
    ["deg", Math.PI / 180],
    ["degrees", Math.PI / 180],
    ["rad", 1],
  ],
  "melting-integral": [
    ["A2s", 1],
    ["A^2s", 1],
    ["A\u00b2s", 1],
  ],
  perveance: [
    ["uA/V^1.5", 1e-6],
    ["mA/V^1.5", 1e-3],
    ["A/V^1.5", 1],
    // Laws with another exponent write their own.
    ["uA/V^n", 1e-6],
    ["A/V^n", 1],
  ],
  "capacitance-per-length": [
    ["pF/m", 1e-12],
    ["pF/ft", 1e-12 / 0.3048],
    ["F/m", 1],
  ],
  "inductance-per-length": [
    ["nH/m", 1e-9],
    ["uH/m", 1e-6],
    ["H/m", 1],
  ],
  "inductance-per-turn-squared": [
    ["nH/turn^2", 1e-9],
    // Catalogues of powdered iron and of ferrite toroids.
    ["uH/100turns", 1e-10],
    ["mH/1000turns", 1e-9],
    ["H/turn^2", 1],
  ],
  resistivity: [
    ["ohm-m", 1],
    ["ohm-mm2/m", 1e-6],
  ],
  "temperature-difference": [
    ["K", 1],
    ["degC", 1],
  ],
  "thermal-resistance": [
    ["K/W", 1],
    ["degC/W", 1],
  ],
  "ohms-per-volt": [
    ["ohm/V", 1],
    ["kohm/V", 1e3],
  ],
};

/** The unit of what `compute` takes and gives; empty for a bare number. */
export const siUnits: Readonly<Record<FormulaDimension, string>> = {
  resistance: "ohm",
  capacitance: "F",
  inductance: "H",
  voltage: "V",
  current: "A",
  power: "W",
  energy: "J",
  frequency: "Hz",
  time: "s",
  temperature: "K",
  conductance: "S",
  charge: "C",
  length: "m",
  ratio: "",
  level: "dB",
  angle: "rad",
  "melting-integral": "A2s",
  perveance: "A/V^1.5",
  "capacitance-per-length": "F/m",
  "inductance-per-length": "H/m",
  "inductance-per-turn-squared": "H/turn^2",
  resistivity: "ohm-m",
  "temperature-difference": "K",
  "thermal-resistance": "K/W",
  "ohms-per-volt": "ohm/V",
};

/** Whether a dimension is one of the formulas' own. */
export function isDerived(dimension: FormulaDimension): dimension is DerivedDimension {
  return Object.hasOwn(derivedUnits, dimension);
}
