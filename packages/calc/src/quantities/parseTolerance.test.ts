import { describe, expect, it } from "vitest";
import { parseTolerance } from "./parseTolerance.ts";

// Letters: IEC 60062 as in reference section 2.4 (S19); GMV: section 4.6.
const good: readonly (readonly [string, number, number])[] = [
  ["10%", 0.1, 0.1],
  ["10", 0.1, 0.1],
  ["±10 %", 0.1, 0.1],
  ["+-10", 0.1, 0.1],
  ["+/-10%", 0.1, 0.1],
  ["-10 +50 %", 0.1, 0.5],
  ["-10/+100%", 0.1, 1],
  ["+80 -20 %", 0.2, 0.8],
  ["+100/-0%", 0, 1],
  ["0.5 percent", 0.005, 0.005],
  ["J", 0.05, 0.05],
  ["K", 0.1, 0.1],
  ["M", 0.2, 0.2],
  ["Z", 0.2, 0.8],
  ["T", 0.1, 0.5],
  ["GMV", 0, 1],
];

const bad: readonly (readonly [string, string | undefined])[] = [
  ["", undefined],
  ["k", "K"],
  ["abc", undefined],
  ["constructor", undefined],
  ["__proto__", undefined],
  ["10 V", "10 %"],
  ["100 %", undefined],
  ["-10 -20 %", "10 %"],
  ["-10 +2000 %", undefined],
  ["10% 20%", "10 %"],
];

describe("parseTolerance", () => {
  it.each(good)("reads %j as -%d +%d", (text, minus, plus) => {
    expect(parseTolerance(text)).toEqual({ ok: true, value: { minus, plus } });
  });

  it.each(bad)("refuses %j", (text, nearest) => {
    const result = parseTolerance(text);
    if (result.ok) throw new Error(JSON.stringify(result.value));
    expect(result.problem.nearest).toBe(nearest);
  });
});
