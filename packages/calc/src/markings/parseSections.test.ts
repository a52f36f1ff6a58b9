import { describe, expect, it } from "vitest";
import { parseSections } from "./parseSections.ts";

const read = (text: string) =>
  parseSections(text, "capacitor").map((result) => (result.ok ? [result.value.value, result.value.ratedVolts] : result.problem.message));

describe("parseSections", () => {
  // Farads and volts by hand from the legend.
  it.each([
    [
      "20-20/450 V",
      [
        [20e-6, 450],
        [20e-6, 450],
      ],
    ],
    [
      "40-20-20 mfd 450-450-25 V",
      [
        [40e-6, 450],
        [20e-6, 450],
        [20e-6, 25],
      ],
    ],
    [
      "40/450 + 20/450 + 20/25",
      [
        [40e-6, 450],
        [20e-6, 450],
        [20e-6, 25],
      ],
    ],
    [
      "2 x 20 uF 450 V",
      [
        [20e-6, 450],
        [20e-6, 450],
      ],
    ],
    [
      "8-8 mfd 475 W.V.D.C.",
      [
        [8e-6, 475],
        [8e-6, 475],
      ],
    ],
    [
      ".1-.1-.1 400V",
      [
        [0.1e-6, 400],
        [0.1e-6, 400],
        [0.1e-6, 400],
      ],
    ],
    [
      "30–30 µF 350 V",
      [
        [30e-6, 350],
        [30e-6, 350],
      ],
    ],
    ["40 mfd 450V", [[40e-6, 450]]],
  ])("reads %j", (text, wanted) => {
    expect(read(text)).toEqual(wanted);
  });

  it.each([
    ["16+16 uF 350 V", 2, 16e-6, 350],
    ["16 uF + 16 uF 350 V", 2, 16e-6, 350],
    ["50 + 50 / 300 V", 2, 50e-6, 300],
    ["8x8 450V", 2, 8e-6, 450],
    ["3 x 0.1 mfd 400 V", 3, 0.1e-6, 400],
    ["20 uF 25 V, 20 uF 25 V", 2, 20e-6, 25],
  ])("reads %j as %d alike", (text, count, farads, volts) => {
    expect(read(text)).toEqual(Array.from({ length: count }, () => [farads, volts]));
  });

  it("does not take volts apart, nor a percent, nor a trimmer's travel", () => {
    expect(read("25-50V")).toEqual([expect.stringMatching(/several sections/)]);
    expect(read("0.1 uF +80-20% 50V")).toEqual([[0.1e-6, 50]]);
    expect(read("5-20 pF trimmer")).toEqual([[20e-12, undefined]]);
    expect(read("40 mgd, 450 V")).toEqual([expect.stringMatching(/"mgd"/)]);
  });

  it("refuses voltages that do not match the sections", () => {
    expect(read("20-20-20/450-25 V")).toEqual([expect.stringMatching(/3 capacitances and 2 voltages/)]);
  });

  it("says which section cannot be read", () => {
    expect(read("40/450 + 47 ohm")[1]).toMatch(/^section 2: .*not a unit/);
  });

  it("leaves other kinds alone", () => {
    expect(parseSections("47k", "resistor")).toHaveLength(1);
  });
});
