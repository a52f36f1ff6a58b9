import { type Dimension, formatQuantity } from "@underchassis/calc";

const DIMENSION: Readonly<Record<string, Dimension>> = {
  V: "voltage",
  A: "current",
  ohm: "resistance",
  F: "capacitance",
  H: "inductance",
  W: "power",
  J: "energy",
  Hz: "frequency",
  s: "time",
};

/** A value in a base unit as texts write it; a bare ratio with three digits. */
export function withUnit(value: number, unit: string): string {
  const dimension = DIMENSION[unit];
  return dimension === undefined ? `${Number(value.toPrecision(3))}${unit === "" ? "" : ` ${unit}`}` : formatQuantity(value, dimension);
}

/** "a, b and c". */
export function joined(pieces: readonly string[]): string {
  return pieces.length < 2 ? (pieces[0] ?? "") : `${pieces.slice(0, -1).join(", ")} and ${pieces.at(-1)}`;
}
