import { describe, expect, it } from "vitest";
import { fundamentalHertz } from "./fundamental.ts";

describe("fundamentalHertz", () => {
  it("is the largest frequency of which all are multiples", () => {
    expect(fundamentalHertz([])).toBe(0);
    expect(fundamentalHertz([60])).toBe(60);
    expect(fundamentalHertz([60, 180, 120])).toBe(60);
    expect(fundamentalHertz([60, 400])).toBeCloseTo(20, 9);
    expect(fundamentalHertz([60, 120], 30)).toBe(30);
  });
  it("refuses what shares none", () => {
    expect(() => fundamentalHertz([60, 61.7])).toThrow(expect.objectContaining({ code: "bad-value" }));
    expect(() => fundamentalHertz([60], 50)).toThrow(expect.objectContaining({ code: "bad-value" }));
  });
});
