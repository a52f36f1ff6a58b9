import type { ReportReadingLine } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { readingParts } from "./readingParts.ts";

const reading = (more: Partial<ReportReadingLine>): ReportReadingLine => ({
  at: "B+",
  to: "chassis",
  quantity: "dc-volts",
  unit: "V",
  condition: "operating",
  life: "found",
  measured: 243,
  verdict: "outside",
  ...more,
});

describe("readingParts", () => {
  it("says place, circumstance, window, difference", () => {
    const parts = readingParts(
      reading({ nominal: 291, low: 272, high: 312, publishedLow: 280, location: { file: "readings.csv", line: 2, column: 1 } }),
    );
    expect(parts).toMatchObject({
      place: "B+ to chassis",
      circumstance: "DC voltage, operating, as found",
      measured: "243\u00a0V",
      computed: "291\u00a0V",
      window: "272\u00a0V to 312\u00a0V",
      published: "at least 280\u00a0V",
      verdict: "outside",
      // 243 - 291 = -48; 48/291 = 16.5 %
      off: "-48\u00a0V, 16\u00a0%",
      location: "readings.csv:2:1",
    });
  });

  it("gives the difference of a negative voltage its sign by the meter, not by size", () => {
    // -50 - (-55) = +5; 5/55 = 9.1 %
    expect(readingParts(reading({ measured: -50, nominal: -55, low: -60, high: -51 })).off).toBe("+5\u00a0V, 9.1\u00a0%");
  });

  it("gives no share of zero", () => {
    expect(readingParts(reading({ measured: 2.4, nominal: 0, low: -0.1, high: 0.1 })).off).toBe("+2.4\u00a0V");
  });

  it("says open for an infinite resistance, measured or computed", () => {
    const parts = readingParts(
      reading({ quantity: "ohms", unit: "ohm", measured: null, nominal: null, low: null, high: null, verdict: "within" }),
    );
    expect([parts.measured, parts.computed, parts.window, parts.off]).toStrictEqual(["open", "open", "open", ""]);
  });

  it("says that nothing was computed", () => {
    const parts = readingParts(reading({ verdict: "not-computed" }));
    expect([parts.computed, parts.window, parts.off]).toStrictEqual(["not computed", "", ""]);
  });
});
