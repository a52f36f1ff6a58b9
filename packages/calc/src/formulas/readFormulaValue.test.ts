import { expect, test } from "vitest";
import { derivedUnits } from "./dimensions.ts";
import { formatFormulaValue } from "./formatFormulaValue.ts";
import { readFormulaValue } from "./readFormulaValue.ts";

test.each([
  ["4k7", "resistance", 4700],
  ["0.05 mfd", "capacitance", 5e-8],
  ["-3 dB", "level", -3],
  ["12", "level", 12],
  ["180 deg", "angle", Math.PI],
  ["90 pF/m", "capacitance-per-length", 90e-12],
  // Powdered-iron catalogues give microhenries for 100 turns: 40 uH/100^2.
  ["40 uH/100turns", "inductance-per-turn-squared", 4e-9],
  ["20 kohm/V", "ohms-per-volt", 20_000],
] as const)("reads %s as %s", (text, dimension, value) => {
  const read = readFormulaValue(text, dimension);
  expect(read).toMatchObject({ ok: true });
  expect(read.ok ? read.value : Number.NaN).toBeCloseTo(value, 15);
});

test.each([
  ["45 ohm", "voltage"],
  ["3", "melting-integral"],
  ["3 dB", "angle"],
  ["many dB", "level"],
] as const)("refuses %s as %s and says what it wants", (text, dimension) => {
  const read = readFormulaValue(text, dimension);
  expect(read.ok).toBe(false);
  if (!read.ok) expect(read.problem.expected.length).toBeGreaterThan(5);
});

test.each(Object.keys(derivedUnits) as (keyof typeof derivedUnits)[])("what is printed of %s can be read again", (dimension) => {
  const read = readFormulaValue(formatFormulaValue(1.25e-3, dimension, 6), dimension);
  expect(read.ok && Math.abs(read.value / 1.25e-3 - 1)).toBeLessThan(1e-5);
});
