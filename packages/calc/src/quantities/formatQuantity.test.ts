import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatQuantity } from "./formatQuantity.ts";
import { parseQuantity } from "./parseQuantity.ts";
import type { Dimension } from "./types.ts";

// Spelling rules are this project's own: reference section 1.4 for the units, pF below 1 nF, nF below 10 nF, uF above.
const table: readonly (readonly [number, Dimension, string])[] = [
  [47e-6, "capacitance", "47 uF"],
  [0.05e-6, "capacitance", "0.05 uF"],
  [10e-9, "capacitance", "0.01 uF"],
  [4.7e-9, "capacitance", "4.7 nF"],
  [9.99e-9, "capacitance", "9.99 nF"],
  [9.999e-9, "capacitance", "0.01 uF"],
  [999.6e-12, "capacitance", "1 nF"],
  [250e-12, "capacitance", "250 pF"],
  [0.33e-12, "capacitance", "0.33 pF"],
  [2200e-6, "capacitance", "2200 uF"],
  [4700, "resistance", "4.7 kohm"],
  [1.2e6, "resistance", "1.2 Mohm"],
  [999.96, "resistance", "1 kohm"],
  [0.47, "resistance", "0.47 ohm"],
  [0, "resistance", "0 ohm"],
  [Number.POSITIVE_INFINITY, "resistance", "open"],
  [Number.POSITIVE_INFINITY, "voltage", "no limit"],
  [Number.NaN, "voltage", "not known"],
  [-55, "voltage", "-55 V"],
  [-0, "voltage", "0 V"],
  [0.012, "current", "12 mA"],
  [0.5, "power", "0.5 W"],
  [0.0945, "power", "94.5 mW"],
  [455e3, "frequency", "455 kHz"],
  [298.15, "temperature", "25 degC"],
  [5.2e-3, "conductance", "5.2 mS"],
  [0.95, "ratio", "0.95"],
];

const printed: readonly Dimension[] = [
  "resistance",
  "capacitance",
  "inductance",
  "voltage",
  "current",
  "power",
  "energy",
  "frequency",
  "time",
  "conductance",
  "charge",
  "length",
  "ratio",
];

describe("formatQuantity", () => {
  it.each(table)("writes %d as %s %j", (value, dimension, text) => {
    expect(formatQuantity(value, dimension)).toBe(text);
  });

  it("keeps as many digits as asked", () => {
    expect(formatQuantity(123456, "resistance", 5)).toBe("123.46 kohm");
    expect(formatQuantity(123456, "resistance", 1)).toBe("100 kohm");
  });

  it("writes what parseQuantity reads back, to half a unit in the last place", () => {
    const sizes = fc.tuple(fc.double({ min: 1, max: 9.999, noNaN: true }), fc.integer({ min: -12, max: 9 }));
    fc.assert(
      fc.property(sizes, fc.constantFrom(...printed), fc.integer({ min: 2, max: 6 }), ([mantissa, power], dimension, digits) => {
        const value = mantissa * 10 ** power;
        const back = parseQuantity(formatQuantity(value, dimension, digits), dimension);
        if (!back.ok) throw new Error(back.problem.message);
        expect(Math.abs(back.value.value - value) / value).toBeLessThanOrEqual(0.5 * 10 ** (1 - digits) + 1e-12);
      }),
      { numRuns: 2000 },
    );
  }, 30_000);
});
