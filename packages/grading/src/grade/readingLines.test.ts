import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import type { Prediction, Reading } from "../model/index.ts";
import { modelOf } from "../testing/model.ts";
import { readingLines, verdictOf } from "./readingLines.ts";

const prediction: Prediction = { nominal: 100, low: 90, high: 110, sigma: 5, worstLow: 80, worstHigh: 125, contributors: [] };
const reading = (value: number) => ({ value }) as Reading;

describe("a grid without direct voltage", () => {
  it("reads 0 V", () => {
    const model = modelOf({
      parts: [
        { name: "R1", kind: "resistor", marked: "470 k", between: ["grid", "chassis"] },
        { name: "C1", kind: "capacitor", marked: "0.02 uF film", between: ["grid", "B+"] },
        { name: "B1", kind: "battery", marked: "250 V", between: ["B+", "chassis"] },
      ],
      readings: [
        { at: "grid", quantity: "dc-volts", value: "0 V" },
        { at: "grid", quantity: "dc-volts", value: "0.9 V" },
      ],
    });
    expect(readingLines(model).map(({ verdict }) => verdict)).toEqual(["within", "far-outside"]);
  });
});

describe("verdict on a reading", () => {
  it.each([
    [100, "within"],
    [90, "within"],
    [110, "within"],
    [112, "outside"],
    // Beyond the worst case and beyond four standard deviations, both.
    [121, "outside"],
    [126, "far-outside"],
    [79, "far-outside"],
    [Number.POSITIVE_INFINITY, "far-outside"],
  ])("%d against 100 (90 to 110; worst 80 to 125) is %s", (value, verdict) => {
    expect(verdictOf(reading(value), prediction)).toBe(verdict);
  });

  it("is not far outside while four standard deviations are not passed", () => {
    expect(verdictOf(reading(126), { ...prediction, sigma: 10 })).toBe("outside");
  });

  it("of a point that is open: any reading above the window is right", () => {
    const open: Prediction = { ...prediction, nominal: Number.POSITIVE_INFINITY, low: 20e6, high: Number.POSITIVE_INFINITY };
    expect(verdictOf(reading(Number.POSITIVE_INFINITY), open)).toBe("within");
    expect(verdictOf(reading(30e6), open)).toBe("within");
    expect(verdictOf(reading(1e6), open)).toBe("far-outside");
  });

  it("is not given where nothing could be computed", () => {
    expect(verdictOf(reading(1), undefined)).toBe("not-computed");
  });
});

describe("reading lines", () => {
  const parts: JobPart[] = [
    { name: "BT", kind: "battery", marked: "300 V", tolerance: "1 %", between: ["top", "chassis"] },
    { name: "R1", kind: "resistor", marked: "100 kohm 10 %", between: ["top", "mid"] },
    { name: "R2", kind: "resistor", marked: "100 kohm 10 %", between: ["mid", "chassis"], fitted: "220 kohm 5 %" },
  ];
  const lines = readingLines(
    modelOf({
      parts,
      meters: { old: { title: "old meter", input: "1 kohm/V", accuracy: "3 %" } },
      readings: [
        { at: "mid", quantity: "dc-volts", value: "150 V", published: "140 to 160 V" },
        { at: "mid", quantity: "dc-volts", value: "206 V", life: "restored" },
        { at: "mid", quantity: "dc-volts", value: "125 V", meter: "old", range: "250 V" },
        { at: "R1", quantity: "dc-amps", value: "1.5 mA" },
        { at: "mid", quantity: "ohms", value: "50 kohm" },
        { at: "nowhere", quantity: "dc-volts", value: "1 V" },
      ],
    }),
  );

  // By hand, with the meter across the lower resistor: 10 Mohm || 100 k and || 220 k, 250 k || 100 k. Then 300 V over 200 k; and with
  // the battery out of the circuit only the lower resistor is left.
  it.each([
    [0, (300 * 99009.9) / 199009.9, "within"],
    [1, (300 * 215264.2) / 315264.2, "within"],
    [2, (300 * 71428.57) / 171428.57, "within"],
    [3, 1.5e-3, "within"],
    [4, 100e3, "far-outside"],
  ])("line %d is computed in its own life, on its own meter", (index, nominal, verdict) => {
    const line = lines[index]!;
    expect(Math.abs((line.nominal ?? 0) / nominal - 1)).toBeLessThan(2e-3);
    expect(line.verdict).toBe(verdict);
  });

  it("keep the job's order, the papers' range and the meter's name", () => {
    expect(lines.map(({ at, quantity }) => `${at} ${quantity}`)).toEqual([
      "mid dc-volts",
      "mid dc-volts",
      "mid dc-volts",
      "R1 dc-amps",
      "mid ohms",
      "nowhere dc-volts",
    ]);
    expect(lines[0]).toMatchObject({ publishedLow: 140, publishedHigh: 160 });
    expect(lines[2]?.meter).toBe("old meter");
  });

  it("say so where nothing can be computed", () => {
    expect(lines[5]).toMatchObject({ nominal: null, low: null, high: null, verdict: "not-computed" });
  });

  it("count deviations in standard deviations", () => {
    expect(lines[1]!.deviation).toBeCloseTo((206 - (lines[1]!.nominal ?? 0)) / (((lines[1]!.high ?? 0) - (lines[1]!.low ?? 0)) / 4), 6);
  });
});
