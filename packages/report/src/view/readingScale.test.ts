import type { ReportReadingLine } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { readingScale } from "./readingScale.ts";

const reading = (more: Partial<ReportReadingLine>): ReportReadingLine => ({
  at: "B+",
  to: "chassis",
  quantity: "dc-volts",
  unit: "V",
  condition: "operating",
  life: "found",
  measured: 290,
  verdict: "within",
  ...more,
});

describe("readingScale", () => {
  it("puts every two-sided window into the middle third", () => {
    for (const [low, high] of [
      [270, 300],
      [-0.1, 0.1],
      [1e6, 2e6],
    ] as const) {
      const scale = readingScale(reading({ low, high, nominal: (low + high) / 2, measured: low }), 300);
      expect(scale?.window.from).toBeCloseTo(100, 6);
      expect(scale?.window.to).toBeCloseTo(200, 6);
      expect(scale?.nominal).toBeCloseTo(150, 6);
      expect(scale?.measured).toMatchObject({ off: "no" });
      expect(scale?.measured.at).toBeCloseTo(100, 6);
    }
  });

  it("marks what lies beyond the axis at its edge", () => {
    // The axis of 270 to 300 ends at 240 and 330.
    expect(readingScale(reading({ low: 270, high: 300, measured: 331 }), 300)?.measured).toStrictEqual({ at: 300, off: "above" });
    expect(readingScale(reading({ low: 270, high: 300, measured: 239 }), 300)?.measured).toStrictEqual({ at: 0, off: "below" });
    expect(readingScale(reading({ low: 270, high: 300, measured: null }), 300)?.measured).toStrictEqual({ at: 300, off: "above" });
  });

  it("leaves room between the labels of the ticks", () => {
    // A window of 376 to 411 kohm lies on an axis of 341 to 446 kohm: steps of 20 kohm would make five labels.
    const crowded = reading({ unit: "ohm", measured: 401e3, nominal: 402e3, low: 376e3, high: 411e3 });
    const ticks = readingScale(crowded, 300)?.ticks ?? [];
    expect(ticks.length).toBeGreaterThanOrEqual(2);
    expect(ticks.length).toBeLessThanOrEqual(4);
  });

  it("puts ticks where their values lie", () => {
    const scale = readingScale(reading({ low: 270, high: 300 }), 300);
    expect(scale?.ticks.length).toBeGreaterThanOrEqual(2);
    for (const tick of scale?.ticks ?? []) expect(tick.at).toBeCloseTo(((tick.value - 240) / 90) * 300, 6);
  });

  it.each([
    ["at most 5", { low: null, high: 5 }],
    ["at most 0", { high: 0 }],
    ["at most -5", { high: -5 }],
    ["at least 5", { low: 5, high: null }],
    ["at least -5", { low: -5 }],
    ["exactly 0", { low: 0, high: 0, nominal: 0 }],
  ])("draws a window of %s with finite ends in order", (_, bounds) => {
    const scale = readingScale(reading({ ...bounds, measured: 0 }), 300);
    expect(scale).toBeDefined();
    expect(scale?.window.from).toBeLessThanOrEqual(scale?.window.to ?? -1);
    expect([scale?.window.from, scale?.window.to, scale?.measured.at].every((value) => Number.isFinite(value))).toBe(true);
    expect(scale?.window).toMatchObject({
      openLow: !("low" in bounds) || bounds.low === null,
      openHigh: !("high" in bounds) || bounds.high === null,
    });
  });

  it("keeps a published range within the axis", () => {
    const scale = readingScale(reading({ low: 270, high: 300, publishedLow: 100, publishedHigh: 285 }), 300);
    expect(scale?.published).toStrictEqual({ from: 0, to: 150 });
  });

  it("draws nothing without a computed window", () => {
    expect(readingScale(reading({ verdict: "not-computed", low: 1, high: 2 }), 300)).toBeUndefined();
    expect(readingScale(reading({ low: null, high: null }), 300)).toBeUndefined();
  });
});
