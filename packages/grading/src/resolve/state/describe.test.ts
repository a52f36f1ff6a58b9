import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";

const stateOf = (kind: JobPart["kind"], marked?: string, era?: number) =>
  modelOf({
    ...(era === undefined ? {} : { chassis: { era } }),
    parts: [{ name: "X", kind, between: ["a", "b"], ...(marked === undefined ? {} : { marked }) }],
  }).parts.get("X")!.lives.designed;

describe("what a marking makes of a part", () => {
  it("choke: its wire resistance, or 30 ohm a henry when none is given (from-memory)", () => {
    expect(stateOf("inductor", "8 H 100 mA 250 ohm")).toMatchObject({
      main: { value: 8 },
      ratedAmps: 0.1,
      dcr: { value: 250, from: "marking" },
    });
    expect(stateOf("inductor", "8 H").dcr).toMatchObject({ value: 240, from: "default", tolerance: { minus: 0.4, plus: 0.4 } });
  });

  it("fuse: 0.15 V across it at its rated current (from-memory)", () => {
    expect(stateOf("fuse", "2 A slow-blow 250 V")).toMatchObject({ ratedAmps: 2, ratedVolts: 250, speed: "T", dcr: { value: 0.075 } });
  });

  it("thermistor: cold resistance, steady current, energy", () => {
    expect(stateOf("thermistor", "10 ohm 3 A 20 J")).toMatchObject({ main: { value: 10 }, ratedAmps: 3, joules: 20 });
  });

  it("battery: its voltage, five percent either way", () => {
    expect(stateOf("battery", "90 V").main).toEqual({ value: 90, tolerance: { minus: 0.05, plus: 0.05 }, from: "marking" });
  });

  it.each([
    ["3-wire grounded cord", true],
    ["three-conductor", true],
    ["earthed", true],
    ["2-wire", false],
    ["2-wire polarized", false],
  ])("cord %s", (marked, earthed) => {
    expect(stateOf("cord", marked).earthed).toBe(earthed);
  });

  it("switch: its contact rating, when it has one", () => {
    expect(stateOf("switch", "3 A 250 V")).toMatchObject({ ratedAmps: 3, ratedVolts: 250 });
    expect(stateOf("switch").ratedAmps).toBeUndefined();
  });

  // IEC 60062 and the old practice agree: no fourth band is 20 %.
  it("resistor: bands with no tolerance band are 20 %", () => {
    expect(stateOf("resistor", "yellow violet orange")).toMatchObject({ main: { value: 47e3, tolerance: { minus: 0.2, plus: 0.2 } } });
  });

  it("lamp: volts and amperes", () => {
    expect(stateOf("lamp", "6.3 V 0.15 A")).toMatchObject({ ratedVolts: 6.3, ratedAmps: 0.15 });
  });

  it("nothing where it gives no value", () => {
    expect(() => stateOf("capacitor", "450 V")).toThrow(/value-(missing|unreadable)/);
  });
});
