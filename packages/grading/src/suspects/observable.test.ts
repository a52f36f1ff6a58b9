import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { observableAt } from "../testing/suspectChassis.ts";
import { observableKey, scaled, scaleSlope, situationKey, unscaled } from "./observable.ts";

describe("the scale of ohms", () => {
  it("is the logarithm above a lead's 0.2 ohm, and ends at 20 megohm", () => {
    expect(scaled("ohms", 0)).toBeCloseTo(Math.log(0.2), 12);
    expect(scaled("ohms", 999.8)).toBeCloseTo(Math.log(1000), 12);
    for (const open of [2e7, 1e9, Number.POSITIVE_INFINITY]) expect(scaled("ohms", open)).toBeCloseTo(Math.log(2e7), 6);
  });

  it("comes back to ohms, and what lies at its top reads open", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1.9e7, noNaN: true }), (ohms) => {
        expect(Math.abs(unscaled("ohms", scaled("ohms", ohms)) - ohms)).toBeLessThan(1e-9 * ohms + 1e-12);
      }),
    );
    expect(unscaled("ohms", scaled("ohms", 5e7))).toBe(Number.POSITIVE_INFINITY);
  });

  it("has the slope of its logarithm, and none at its top", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e7, noNaN: true }), (ohms) => {
        const difference = (scaled("ohms", ohms * 1.0001) - scaled("ohms", ohms * 0.9999)) / (0.0002 * ohms);
        // The third derivative leaves 1e-8 / 3 of it, rounding of a logarithm of 16 about 1e-11.
        expect(Math.abs(difference / scaleSlope("ohms", ohms) - 1)).toBeLessThan(1e-7);
      }),
    );
    expect(scaleSlope("ohms", 3e7)).toBe(0);
  });
});

it("volts and amperes are as they are", () => {
  for (const quantity of ["dc-volts", "ripple-volts", "ac-volts", "dc-amps", "ac-amps"] as const) {
    expect([scaled(quantity, -3), unscaled(quantity, -3), scaleSlope(quantity, -3)]).toEqual([-3, -3, 1]);
  }
});

it("one situation is a condition on one line voltage; one observable also a quantity between two points", () => {
  const volts = observableAt("dc-volts", "a");
  expect(situationKey(observableAt("ripple-volts", "b"))).toBe(situationKey(volts));
  expect(situationKey({ ...volts, lineVolts: 100 })).not.toBe(situationKey(volts));
  expect(situationKey(observableAt("ohms", "a"))).not.toBe(situationKey(volts));
  const others = [
    observableAt("ripple-volts", "a"),
    observableAt("dc-volts", "b"),
    { ...volts, to: "b" },
    { ...volts, condition: "standby" },
  ];
  expect(new Set([volts, ...others].map(observableKey)).size).toBe(5);
});
