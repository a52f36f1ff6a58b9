import { describe, expect, it } from "vitest";
import { digitsToTell, formatShare, formatValue } from "./formatValue.ts";

/** With plain blanks, for reading. */
const plain = (text: string): string => text.replaceAll("\u00a0", " ");

describe("formatValue", () => {
  // Prefixes: SI; spellings: formatQuantity of the calc package.
  it.each([
    [0.000047, "F", "47 uF"],
    [263.4, "V", "263 V"],
    [0.436, "A", "436 mA"],
    [41e6, "ohm", "41 Mohm"],
    [12.5, "%", "12.5 %"],
    [3, "A2s", "3 A2s"],
    [0.25, "", "0.25"],
    [null, "V", "not known"],
    [-2.2e-37, "A", "0 A"],
    [1e-12, "A", "1 pA"],
    [8.07e-8, "V", "0 V"],
    [-1.31e-6, "V", "0 V"],
    [209e-6, "V", "209 uV"],
    [3.1e-18, "W", "0 W"],
    [1e-12, "F", "1 pF"],
    [Number.NaN, "V", "not known"],
    [Number.POSITIVE_INFINITY, "ohm", "open"],
    // 0 degC is 273.15 K by definition; 40 K can only be a rise.
    [313.15, "K", "40 degC"],
    [40, "K", "40 K"],
  ])("%s %s is %s", (value, unit, text) => {
    expect(plain(formatValue(value, unit))).toBe(text);
  });

  it("keeps number and unit together", () => {
    expect(formatValue(5, "V")).toBe("5\u00a0V");
    expect(formatValue(5, "min")).toBe("5\u00a0min");
  });

  it("says an unknown value as asked", () => {
    expect(formatValue(null, "ohm", 3, "open")).toBe("open");
  });
});

describe("digitsToTell", () => {
  it("shows a value apart from a limit that it nearly reaches", () => {
    expect(digitsToTell([349.6, 350], "V")).toBe(4);
    expect(digitsToTell([349.6, 351], "V")).toBe(3);
  });

  it("does not go beyond six digits, nor chase equal values", () => {
    expect(digitsToTell([1, 1.0000000001], "V")).toBe(6);
    expect(digitsToTell([350, 350, null, undefined], "V")).toBe(3);
  });
});

describe("formatShare", () => {
  it("is percent", () => {
    expect(plain(formatShare(0.186))).toBe("19 %");
    expect(plain(formatShare(3.42))).toBe("342 %");
  });
});
