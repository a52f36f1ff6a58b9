import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseSpan } from "./parseSpan.ts";
import type { Dimension } from "./types.ts";

const infinity = Number.POSITIVE_INFINITY;

// Ends computed by hand from the words.
const good: readonly (readonly [string, Dimension, number, number])[] = [
  ["270 to 300 V", "voltage", 270, 300],
  ["270-300 V", "voltage", 270, 300],
  ["270 V - 300 V", "voltage", 270, 300],
  ["270–300 V", "voltage", 270, 300],
  ["270 ... 300", "voltage", 270, 300],
  ["285 V +-10 %", "voltage", 256.5, 313.5],
  ["285 V ±10%", "voltage", 256.5, 313.5],
  ["-50 V +-10 %", "voltage", -55, -45],
  ["285 V ±15 V", "voltage", 270, 300],
  ["285 +-15 V", "voltage", 270, 300],
  ["-45 to -55 V", "voltage", -55, -45],
  ["-55 - -45 V", "voltage", -55, -45],
  ["max 0.5 V", "voltage", -infinity, 0.5],
  ["0.5 V max", "voltage", -infinity, 0.5],
  ["< 2 V", "voltage", -infinity, 2],
  ["up to 2 W", "power", 0, 2],
  ["> 2 Mohm", "resistance", 2e6, infinity],
  ["at least 200 V", "voltage", 200, infinity],
  ["10k-15k", "resistance", 10e3, 15e3],
  ["900 ohm to 1.1k", "resistance", 900, 1100],
  ["40 mfd -10 +50 %", "capacitance", 36e-6, 60e-6],
  ["285 V", "voltage", 285, 285],
  ["1-1/2 A", "current", 1.5, 1.5],
];

const bad: readonly (readonly [string, Dimension])[] = [
  ["", "voltage"],
  ["270 to", "voltage"],
  ["to 300 V", "voltage"],
  ["270 to 300 kc", "voltage"],
  ["270 V to 300 mA", "voltage"],
  ["max", "voltage"],
  ["+-5 V", "voltage"],
  ["270-300-330 V", "voltage"],
  ["-5 to 5 ohm", "resistance"],
];

describe("parseSpan", () => {
  it.each(good)("reads %j as %s from %d to %d", (text, dimension, low, high) => {
    const result = parseSpan(text, dimension);
    if (!result.ok) throw new Error(result.problem.message);
    for (const [found, wanted] of [
      [result.value.low, low],
      [result.value.high, high],
    ] as const) {
      if (Number.isFinite(wanted)) expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-12 * Math.abs(wanted));
      else expect(found).toBe(wanted);
    }
  });

  it.each(bad)("refuses %j as %s", (text, dimension) => {
    const result = parseSpan(text, dimension);
    if (result.ok) throw new Error(`read as ${result.value.low} to ${result.value.high}`);
    expect(result.problem.expected).toContain("range");
  });

  it("never throws and never turns the ends round", () => {
    const texts = fc
      .array(fc.constantFrom("270", " ", "-", "to", "V", "max", "±", "+-", "10", "%", "<", ".", "k", "1/2"), { maxLength: 9 })
      .map((list) => list.join(""));
    fc.assert(
      fc.property(fc.oneof(fc.string(), texts), (text) => {
        const result = parseSpan(text, "voltage");
        return !result.ok || result.value.low <= result.value.high;
      }),
      { numRuns: 2000 },
    );
  }, 30_000);
});
