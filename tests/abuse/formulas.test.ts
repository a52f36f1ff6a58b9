/** Formulas that try to get out of the formula language: each is refused in no time, with words that name the piece and its place. */
import { cpuUsage } from "node:process";
import { type FormulaError, parseFormula } from "@underchassis/calc/expression";
import { describe, expect, it } from "vitest";

/** Milliseconds of processor time that a refusal may take. */
const MOST_MILLISECONDS = 250;

const MARK = "\u00bb";

/**
 * What is tried, with a mark before the character at which the refusal must point; a formula without a mark is refused as a whole,
 * from its first character.
 */
const ESCAPES: Readonly<Record<string, readonly string[]>> = {
  "property access": [
    "r.ohms + \u00bba.__proto__",
    "r.ohms > \u00bba.constructor",
    "1 + \u00bbr.ohms.constructor",
    '1 + \u00bb"abc".length',
    "2 * \u00bba[1]",
    'r.ohms - \u00bba["constructor"]',
    'r.ohms - \u00bba["__proto__"]',
    "1 + a\u00bb?.b",
    "1 + \u00bba.toString",
    "1 + \u00bba.hasOwnProperty",
    "\u00bbvalueOf > 1",
    "1 < \u00bbhasOwnProperty.ohms",
    "\u00bbconstructor",
  ],
  constructors: [
    '\u00bbFunction("return process")',
    "1 + \u00bbArray(3)",
    "\u00bbmax.constructor > 1",
    // A call of a call is where the parser stops: the last bracket.
    'constructor.constructor("return process")(\u00bb)',
  ],
  // An arrow stops the parser at the character that it cannot take, the second one.
  "function definition": ["\u00bbf(x) = x", "\u00bbvolts(x) = 3", "\u00bbf(x, y) = x + y", "a \u00bb=> b", "a -\u00bb> b"],
  "functions of the parser underneath": [
    '1 + \u00bbimport("fs")',
    '1 + \u00bbcreateUnit("knot")',
    '1 + \u00bbparse("1")',
    '1 + \u00bbevaluate("1")',
    '1 + \u00bbsimplify("x")',
    '1 + \u00bbderivative("x", "x")',
    '1 + \u00bbunit("5 cm")',
    "1 + \u00bbconfig(1)",
    "1 + \u00bbrandom()",
    "1 + \u00bbfactorial(170)",
    "1 + \u00bbmap(a, b)",
    "1 + \u00bbr.ohms()",
  ],
  // Escapes that JSON does not have stop the parser at the backslash.
  texts: ['\u00bb"abc"', '1 + \u00bb"abc"', '\u00bb"a" == "a"', "1 + \u00bb'abc'", '"\u00bb\\x41"', "\u00bb`a`", "1 + \u00bb`a{b}`"],
  "matrices and objects": ["\u00bb[1, 2]", "1 + \u00bb[[1], [2]]", "min(\u00bb[1])", "\u00bb{a: 1}", '\u00bb{"__proto__": 1}'],
  ranges: ["\u00bb1:3", "\u00bb1:1:1000000", "\u00bba ? 1 : 2"],
  assignments: ["\u00bbx = 1", "\u00bba.b = 1", "\u00bba.__proto__ = b", "1\u00bb; 2", "1\u00bb\n2", 'volts("a") \u00bb= 3'],
  comments: ["1 > 2 \u00bb# 3", "\u00bb# nothing"],
  units: ["\u00bb5 cm", "1 + \u00bb2 ohm", "\u00bb5 m to cm", "\u00bb5 in cm", "1 < \u00bb2 pi"],
  "implicit multiplication": ["\u00bb2x", "\u00bb2(3)", "(\u00bb1)(2)", "1 + \u00bb3 r.ohms"],
  "operators that are not ours": [
    "\u00bb3!",
    "1 + \u00bba!",
    "\u00bba | b",
    "\u00bba & b",
    "\u00bb~a",
    "\u00bba << 1",
    "\u00bba >> 1",
    "\u00bba xor b",
    "\u00bba mod b",
    "5\u00bb%",
    "a \u00bb% b",
    "\u00bba'",
    "\u00bba ?? b",
    "a \u00bb|| b",
    "a \u00bb&& b",
    "\u00bb!a",
  ],
  "numbers that are none": [
    "1 + \u00bb1e999",
    "\u00bb9^9^9^9",
    "1 + \u00bb9^9^9",
    "1 > \u00bb1/0",
    "\u00bbsqrt(0 - 1)",
    "\u00bbpow(10, 400)",
    "\u00bbexp(1000)",
    "\u00bbNaN",
    "1 + \u00bbInfinity",
    "\u00bbtrue",
    "\u00bbnull",
    "\u00bbundefined",
    "\u00bb0x41",
    "1 + \u00bb0b11",
    "1.\u00bb.2",
  ],
  "letters that only look like ours": [
    "\u00bb\u0430.ohms > 1",
    "1 + r.\u00bb\u043ehms",
    "\u00bb\uff41 > 1",
    "r.ohms \u00bb\u2265 1",
    "1 \u00bb\u2212 2",
    "1\u00bb\u00a0+ 2",
    "\u00bb\u202e1 > 2",
    "r\u00bb\u200b.ohms",
    "\u00bb\ud83d\ude00",
    'volts("a\u00bb\u0000")',
    'volts("\u00bb\u0430")',
  ],
  "names that are none": ["\u00bb$a > 1", "1 + \u00bb_a", "\u00bbOhms > 1", "1 + \u00bbr.Ohms", "1 + \u00bb__proto__"],
  "points that are none": ["\u00bbvolts(x)", '\u00bbvolts("a", "b")', '\u00bbvolts("")', "1 + \u00bbripple(3)", '\u00bbvolts("a" + "b")'],
  nothing: ["", " "],
};

const cases = Object.entries(ESCAPES).flatMap(([what, list]) => list.map((marked) => [what, marked] as const));

/** Formulas that are long or deep rather than clever. */
const BOMBS: readonly (readonly [string, string])[] = [
  ["comparisons chained 10 000 deep", `${"1 < ".repeat(10_000)}1`],
  ["a hundred thousand parentheses", `${"(".repeat(100_000)}1${")".repeat(100_000)}`],
  ["parentheses nested 400 deep", `${"(".repeat(400)}1${")".repeat(400)}`],
  ["parentheses that never close", "(".repeat(900)],
  ["minus signs without end", `${"-".repeat(900)}1`],
  ["nots without end", `${"not ".repeat(240)}(1 > 2)`],
  ["powers of powers", `2${"^2".repeat(480)}`],
  ["a number of 900 digits", "9".repeat(900)],
  ["a number of a million digits", "9".repeat(1_000_000)],
  ["an exponent of 900 digits", `1e${"9".repeat(900)}`],
  ["functions in functions", `${"abs(".repeat(200)}1${")".repeat(200)}`],
  ["a function of 400 values", `max(${"1,".repeat(400)}1)`],
  ["brackets without end", "[".repeat(900)],
  ["a name of a million letters", "a".repeat(1_000_000)],
  ["factorials of factorials", `9${"!".repeat(900)}`],
];

/** What a formula is refused with, and how long that took. */
function refusal(text: string): { error: FormulaError; milliseconds: number } {
  const start = cpuUsage();
  try {
    parseFormula(text);
  } catch (error) {
    const { user, system } = cpuUsage(start);
    return { error: error as FormulaError, milliseconds: (user + system) / 1000 };
  }
  throw new Error(`${JSON.stringify(text.slice(0, 80))} was taken`);
}

// The first parse of a process builds the parser; that is not the refusal's time.
parseFormula("1 > 2");

it("there are at least a hundred attempts", () => expect(cases.length + BOMBS.length).toBeGreaterThanOrEqual(100));

describe("formulas that try to get out", () => {
  it.each(cases)("%s: %j", (_what, marked) => {
    const text = marked.replace(MARK, "");
    const { error, milliseconds } = refusal(text);
    expect(error.name).toBe("FormulaError");
    expect(error.message.length).toBeGreaterThan(10);
    expect(error.at.offset, error.message).toBe(Math.max(0, marked.indexOf(MARK)));
    expect(error.at.offset + error.at.length).toBeLessThanOrEqual(Math.max(text.length, 0));
    expect(milliseconds).toBeLessThan(MOST_MILLISECONDS);
  });
});

describe("formulas that are too much", () => {
  it.each(BOMBS)("%s", (_what, text) => {
    const { error, milliseconds } = refusal(text);
    expect(error.name).toBe("FormulaError");
    expect(error.received.length, "what is shown stays short").toBeLessThanOrEqual(900);
    expect(error.at.offset).toBeLessThan(Math.max(1, text.length));
    expect(milliseconds).toBeLessThan(MOST_MILLISECONDS);
  });
});

describe("formulas of the trade", () => {
  it.each([
    "reservoir.ratedVolts >= 1.1 * reservoir.maxVolts",
    '(volts("b-plus") - volts("tap")) / dropper.ohms <= 0.02',
    "-2 ^ 2 < 0 and not (r.ohms > 5 or r.ohms < 1)",
    "1 < r.ohms < 2e6",
    "sqrt(r.ratedWatts * r.ohms) >= r.maxVolts",
    "9 ^ 9 > 1 / 3",
  ])("%s is taken", (text) => expect(parseFormula(text).text).toBe(text));
});
