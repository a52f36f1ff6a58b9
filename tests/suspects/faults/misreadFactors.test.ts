import { expect, it } from "vitest";
import { misreadFactors } from "./misreadFactors.ts";

// E12 (IEC 60063): beside 47 only 27 has one digit the same; beside 12, 10 15 18 share the first and 22 82 the second.
it("one band misread gives another multiplier or an E12 value with one digit the same", () => {
  const values = (ohms: number) =>
    [...new Set(misreadFactors(ohms).map((factor) => Number((factor * ohms).toPrecision(3))))].sort((a, b) => a - b);
  expect(values(47e3)).toEqual([4700, 27e3, 470e3]);
  expect(values(1200)).toEqual([120, 1000, 1500, 1800, 2200, 8200, 12000]);
});
