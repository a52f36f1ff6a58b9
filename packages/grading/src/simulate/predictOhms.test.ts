import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";

const COLD = { life: "found", condition: "cold", line: "actual" } as const;
const resistor = (name: string, a: string, b: string, marked: string, more: Partial<JobPart> = {}): JobPart => ({
  name,
  kind: "resistor",
  marked,
  between: [a, b],
  ...more,
});
const ohms = (parts: JobPart[], at: string, to = "chassis", accuracy = 0) =>
  modelOf({ parts }).predict(COLD, { quantity: "ohms", at, to }, { ohms: 10e6, accuracy });

describe("resistance between two points with the power off", () => {
  const parallel = [
    resistor("R1", "A", "chassis", "100 kohm 10 %"),
    resistor("R2", "A", "B", "220 kohm 10 %"),
    resistor("R3", "B", "chassis", "47 kohm 10 %"),
  ];

  it("counts the parallel paths", () => {
    // 100 k || (220 k + 47 k).
    expect(ohms(parallel, "A")!.nominal).toBeCloseTo(1 / (1 / 100e3 + 1 / 267e3), 2);
    // 47 k || (220 k + 100 k).
    expect(ohms(parallel, "B")!.nominal).toBeCloseTo(1 / (1 / 47e3 + 1 / 320e3), 2);
    expect(ohms(parallel, "A", "B")!.nominal).toBeCloseTo(1 / (1 / 220e3 + 1 / 147e3), 2);
  });

  it("has a window from each resistor's slope: dR / d ln R1 = R^2 / R1, and R^2 R2 / (R2 + R3)^2 for the series pair", () => {
    const r = 1 / (1 / 100e3 + 1 / 267e3);
    const slopes = [r ** 2 / 100e3, (r ** 2 * 220e3) / 267e3 ** 2, (r ** 2 * 47e3) / 267e3 ** 2];
    const sigma = Math.sqrt(slopes.reduce((sum, slope) => sum + (0.1 * slope) ** 2 / 3, 0));
    const prediction = ohms(parallel, "A")!;
    expect(prediction.sigma / sigma).toBeCloseTo(1, 3);
    expect(prediction.worstHigh - r).toBeCloseTo(0.1 * slopes.reduce((sum, slope) => sum + slope), -1);
    expect(prediction.low).toBeLessThan(r);
  });

  it("takes the meter's error in", () => {
    const prediction = ohms(
      [resistor("R1", "A", "chassis", "100 kohm", { tolerance: "1 %", measured: { value: "100 kohm" } })],
      "A",
      "chassis",
      0.05,
    )!;
    // Measured with no stated meter: 2 %, uniform; the meter of this reading: 5 %.
    expect(prediction.sigma).toBeCloseTo(Math.hypot(2000 / Math.sqrt(3), 5000), -1);
  });

  it("goes through chokes and windings as their wire", () => {
    const parts: JobPart[] = [
      { name: "L1", kind: "inductor", marked: "8 H 250 ohm", between: ["raw", "B+"] },
      {
        name: "T1",
        kind: "transformer",
        windings: {
          primary: { between: ["p", "q"], marked: "117 V", measured: "6 ohm" },
          hv: { between: ["h1", "chassis", "h2"], marked: "300-0-300 V", measured: "240 ohm" },
        },
      },
    ];
    expect(ohms(parts, "raw", "B+")!.nominal).toBeCloseTo(250, 6);
    expect(ohms(parts, "h1", "h2")!.nominal).toBeCloseTo(240, 6);
    expect(ohms(parts, "h1")!.nominal).toBeCloseTo(120, 6);
    expect(ohms(parts, "p", "q")!.nominal).toBeCloseTo(6, 6);
  });

  it("reads a capacitor open, with a window down to the leakage that it has at its working voltage", () => {
    const capacitor = (measured: object): JobPart => ({
      name: "C1",
      kind: "capacitor",
      marked: "10 uF 450 V",
      between: ["A", "chassis"],
      measured,
    });
    const open = ohms([capacitor({})], "A")!;
    expect([open.nominal, open.low]).toEqual([Number.POSITIVE_INFINITY, 20e6]);
    const leaky = ohms([capacitor({ leakage: "200 kohm" })], "A")!;
    expect(leaky.nominal).toBe(Number.POSITIVE_INFINITY);
    expect(leaky.low).toBeLessThanOrEqual(200e3);
    const beside = ohms([capacitor({ leakage: "200 kohm" }), resistor("R1", "A", "chassis", "100 kohm 5 %")], "A")!;
    expect(beside.nominal).toBeCloseTo(100e3, 3);
    // 100 k || 200 k.
    expect(beside.low).toBeLessThan(66.7e3);
    expect(beside.high).toBeGreaterThan(100e3);
  });

  it("reads a shorted capacitor as a short", () => {
    const shorted = ohms(
      [{ name: "C1", kind: "capacitor", marked: "10 uF 450 V", between: ["A", "chassis"], measured: { condition: "shorted" } }],
      "A",
    )!;
    expect(shorted.nominal).toBeCloseTo(0.5, 3);
  });

  it("misses a part that is open, and one behind an open switch", () => {
    const parts = [
      resistor("R1", "A", "chassis", "10 kohm"),
      resistor("R2", "A", "chassis", "10 kohm", { measured: { condition: "open" } }),
    ];
    expect(ohms(parts, "A")!.nominal).toBeCloseTo(10e3, 6);
    const behind: JobPart[] = [
      resistor("R1", "A", "B", "10 kohm"),
      { name: "S1", kind: "switch", between: ["B", "chassis"], positions: { cold: "open" } },
      resistor("R2", "A", "chassis", "47 kohm"),
    ];
    expect(ohms(behind, "A")!.nominal).toBeCloseTo(47e3, 6);
  });

  it("is unknown where nothing touches the point", () => {
    expect(ohms(parallel, "nowhere")).toBeUndefined();
  });
});
