import { describe, expect, it } from "vitest";
import { evaluateFormula, FormulaError, parseFormula } from "./index.ts";

const given: Record<string, number> = {
  "reservoir.ratedVolts": 450,
  "reservoir.maxVolts": 400,
  "reservoir.farads": 20e-6,
  lineHertz: 60,
  "choke.meanAmps": 0.06,
};
const values = {
  name: (name: string) => given[name],
  point: (quantity: string, point: string) => (point === "b-plus" ? (quantity === "volts" ? 300 : 6) : undefined),
};
const resultOf = (text: string) => evaluateFormula(parseFormula(text), values).value;

describe("evaluateFormula", () => {
  it.each([
    ["1 + 2 * 3 - 4 / 8", 6.5],
    // Usual mathematical precedence: the power binds tighter than the sign, and groups from the right.
    ["-2 ^ 2", -4],
    ["2 ^ 3 ^ 2", 512],
    ["(1 + 2) * 3", 9],
    ["abs(-3) + sqrt(16) + pow(2, 10) + min(4, 2, 3) + max(1, 5)", 3 + 4 + 1024 + 2 + 5],
    ["log(exp(2)) + log10(1000)", 5],
    ["2 * pi * lineHertz", 376.99111843077515],
    ['0.06 / (2 * lineHertz * reservoir.farads) + volts("b-plus") + ripple("b-plus")', 25 + 300 + 6],
  ])("%s = %d", (text, expected) => expect(resultOf(text)).toBeCloseTo(expected, 9));

  it.each([
    ["reservoir.ratedVolts >= 1.1 * reservoir.maxVolts", true],
    ["reservoir.ratedVolts >= 1.2 * reservoir.maxVolts", false],
    ["1 < 2 and not (3 > 4)", true],
    ["1 > 2 or 2 >= 2", true],
    ["1 < 2 < 3", true],
    ["1 < 3 < 2", false],
    ["2 == 2 and 2 != 3", true],
  ])("%s is %s", (text, expected) => expect(resultOf(text)).toBe(expected));

  it("shows both sides of every comparison", () => {
    const { comparisons } = evaluateFormula(parseFormula("reservoir.ratedVolts >= 1.2 * reservoir.maxVolts and lineHertz == 60"), values);
    expect(comparisons).toEqual([
      {
        operator: ">=",
        unit: "V",
        leftText: "reservoir.ratedVolts",
        rightText: "1.2 * reservoir.maxVolts",
        left: 450,
        right: 480,
        holds: false,
      },
      { operator: "==", unit: "Hz", leftText: "lineHertz", rightText: "60", left: 60, right: 60, holds: true },
    ]);
  });

  it("is undecided where a value is missing, and names it", () => {
    const evaluated = evaluateFormula(parseFormula('choke.ratedAmps >= choke.meanAmps and volts("tap") > 1'), values);
    expect(evaluated.value).toBeUndefined();
    expect(evaluated.missing).toEqual(["choke.ratedAmps", 'volts("tap")']);
  });

  it("is decided by the other side of and and or", () => {
    expect(resultOf("choke.ratedAmps > 0 and 1 > 2")).toBe(false);
    expect(resultOf("choke.ratedAmps > 0 or 2 > 1")).toBe(true);
    expect(resultOf("choke.ratedAmps > 0 or 1 > 2")).toBeUndefined();
  });

  it.each(["lineHertz / 0", "sqrt(-lineHertz)", "lineHertz / 0 > 2", "log(0 * lineHertz) < 3"])("does not know %s", (text) =>
    expect(resultOf(text)).toBeUndefined(),
  );
});

describe("parseFormula", () => {
  it("lists names and points once", () => {
    const formula = parseFormula('a.ohms * a.ohms + lineVolts > volts("x") + volts("x") + ripple("x") * pi');
    expect(formula.names).toEqual(["a.ohms", "lineVolts"]);
    expect(formula.points).toEqual([
      { quantity: "volts", point: "x" },
      { quantity: "ripple", point: "x" },
    ]);
    expect(formula.gives).toBe("truth");
  });

  it.each([
    ["a = 3", "assignment"],
    ["f(x) = x", "functionassignment"],
    ["[1, 2]", "array"],
    ["1:10", "range"],
    ["a > 1 ? 2 : 3", "conditional"],
    ["a; b", "several formulas"],
    ['{"x": 1}', "object"],
    ['import("fs")', "import"],
    ['evaluate("1")', "evaluate"],
    ['parse("1")', "parse"],
    ["random()", "random"],
    ["constructor(1)", "constructor"],
    ["toString(1)", "toString"],
    ["a.b.c", "role.property"],
    ["a.constructor.constructor(1)", "no function"],
    ["a.method(1)", "no function"],
    ["a[1]", "role.property"],
    ["2 pi", "sign"],
    ["5 % 2", "remainder"],
    ["3!", "factorial"],
    ["a'", "ctranspose"],
    ["1 | 2", "bitOr"],
    ["1 to 2", "to"],
    ["a xor b", "xor"],
    ['"text"', "only numbers"],
    ["volts(b)", "in quotes"],
    ['volts("a", "b")', "in quotes"],
    ["sqrt(1, 2)", "takes 1"],
    ["__proto__", "no name"],
    ["true", "numbers"],
    ["Infinity + NaN", "only numbers"],
  ])("refuses %s by name", (text, named) => {
    expect(() => parseFormula(text)).toThrowError(FormulaError);
    expect(() => parseFormula(text)).toThrowError(named);
  });

  it("tells numbers from comparisons", () => {
    expect(() => parseFormula("(1 < 2) + 3")).toThrowError("a number is needed");
    expect(() => parseFormula("1 and 2 > 1")).toThrowError("a comparison is needed");
    expect(() => parseFormula("not 5")).toThrowError("a comparison is needed");
  });

  it("refuses what it cannot read, what is too long and what is too deep", () => {
    expect(() => parseFormula("1 +")).toThrowError("not a formula");
    expect(() => parseFormula(`1${" + 1".repeat(400)}`)).toThrowError("characters");
    expect(() => parseFormula(`${"-(".repeat(80)}1${")".repeat(80)}`)).toThrowError("nesting");
  });
});
