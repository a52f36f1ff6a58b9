import type { FormulaDimension } from "../../packages/calc/src/formulas/index.ts";

/** Exponents of volt, ampere, second, metre and kelvin. */
type Exponents = readonly [number, number, number, number, number];

const exponents: Readonly<Record<FormulaDimension, Exponents>> = {
  voltage: [1, 0, 0, 0, 0],
  current: [0, 1, 0, 0, 0],
  resistance: [1, -1, 0, 0, 0],
  conductance: [-1, 1, 0, 0, 0],
  capacitance: [-1, 1, 1, 0, 0],
  inductance: [1, -1, 1, 0, 0],
  power: [1, 1, 0, 0, 0],
  energy: [1, 1, 1, 0, 0],
  frequency: [0, 0, -1, 0, 0],
  time: [0, 0, 1, 0, 0],
  charge: [0, 1, 1, 0, 0],
  length: [0, 0, 0, 1, 0],
  temperature: [0, 0, 0, 0, 1],
  ratio: [0, 0, 0, 0, 0],
  level: [0, 0, 0, 0, 0],
  angle: [0, 0, 0, 0, 0],
  "melting-integral": [0, 2, 1, 0, 0],
  perveance: [-1.5, 1, 0, 0, 0],
  "capacitance-per-length": [-1, 1, 1, -1, 0],
  "inductance-per-length": [1, -1, 1, -1, 0],
  "inductance-per-turn-squared": [1, -1, 1, 0, 0],
  resistivity: [1, -1, 0, 1, 0],
  "temperature-difference": [0, 0, 0, 0, 1],
  "ohms-per-volt": [0, -1, 0, 0, 0],
  "thermal-resistance": [-1, -1, 0, 0, 1],
};

/** How many of the new units make one old unit of a dimension, when the base units shrink by these factors. */
export function scaleOf(dimension: FormulaDimension, factors: readonly number[]): number {
  return exponents[dimension].reduce((product, exponent, index) => product * (factors[index] ?? 1) ** exponent, 1);
}
