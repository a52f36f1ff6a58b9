import { describe, expect, it } from "vitest";
import { letterCode, threeFigureCode, writeBack } from "./writeBack.ts";

describe("letterCode", () => {
  // Examples printed for IEC 60062 (rkm-pages; reference section 2.3).
  it.each([
    [0.47, "resistance", "R47"],
    [4.7, "resistance", "4R7"],
    [4700, "resistance", "4K7"],
    [47300, "resistance", "47K3"],
    [4.7e6, "resistance", "4M7"],
    [0.33e-12, "capacitance", "p33"],
    [3.3e-12, "capacitance", "3p3"],
    [33e-12, "capacitance", "33p"],
    [330e-12, "capacitance", "330p"],
    [3.3e-9, "capacitance", "3n3"],
    [470e-9, "capacitance", "470n"],
    [4.7e-6, "capacitance", "4u7"],
    [1e-9, "capacitance", "1n"],
    [999.96, "resistance", "1K"],
    [0, "resistance", "0R"],
  ] as const)("%d %s is %s", (value, dimension, wanted) => {
    expect(letterCode(value, dimension)).toBe(wanted);
  });
});

describe("threeFigureCode", () => {
  // Two figures and a power of ten, in picofarad (capacitor-letter-codes).
  it.each([
    [47e-9, "473"],
    [100e-9, "104"],
    [10e-12, "100"],
    [4.7e-12, undefined],
    [475e-12, undefined],
    [0, undefined],
  ])("%d F is %s", (farads, wanted) => {
    expect(threeFigureCode(farads)).toBe(wanted);
  });
});

describe("writeBack", () => {
  it("writes bands only where bands carry the value and the tolerance", () => {
    expect(writeBack(47e3, "resistance", { minus: 0.1, plus: 0.1 }).bands).toEqual(["yellow", "violet", "orange", "silver"]);
    expect(writeBack(47.5e3, "resistance", { minus: 0.1, plus: 0.1 }).bands).toBeUndefined();
    expect(writeBack(47e3, "resistance", { minus: 0.1, plus: 0.5 }).bands).toBeUndefined();
    expect(writeBack(47e3, "resistance", { minus: 0.03, plus: 0.03 }).bands).toBeUndefined();
  });

  it("puts the tolerance letter behind the three figures", () => {
    expect(writeBack(47e-9, "capacitance", { minus: 0.05, plus: 0.05 }).figures).toBe("473J");
    expect(writeBack(20e-6, "capacitance", { minus: 0.1, plus: 0.5 }).figures).toBe("206T");
    expect(writeBack(47e-9, "capacitance", { minus: 0.07, plus: 0.07 }).figures).toBe("473");
  });
});
