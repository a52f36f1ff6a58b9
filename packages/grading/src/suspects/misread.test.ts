import { describe, expect, it } from "vitest";
import { misreadOhms } from "./misread.ts";

/** IEC 60063, two digits. */
const E24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];
const cases = E24.flatMap((digits) => [-1, 0, 1, 2, 3, 4, 5].map((power) => digits * 10 ** power));

/** The three bands of a value: two digits and the power of ten. */
function bandsOf(ohms: number): [number, number, number] {
  const power = Math.floor(Math.log10(ohms * (1 + 1e-9))) - 1;
  const digits = Math.round(ohms / 10 ** power);
  return [Math.floor(digits / 10), digits % 10, power];
}

describe("misreadOhms", () => {
  it("E24 over seven decades: every value differs in one band, once, and has two digits", () => {
    for (const ohms of cases) {
      const right = bandsOf(ohms);
      const found = misreadOhms(ohms);
      for (const { ohms: value } of found) {
        const bands = bandsOf(value);
        const differ = bands.filter((band, k) => band !== right[k]);
        expect(differ, `${value} for ${ohms}`).toHaveLength(1);
        expect(((bands[0] * 10 + bands[1]) * 10 ** bands[2]) / value).toBeCloseTo(1, 9);
      }
      expect(new Set(found.map(({ ohms: value }) => value.toPrecision(9))).size).toBe(found.length);
      // Four multipliers, eight other first digits (none begins with black), nine other second ones.
      expect(found).toHaveLength(4 + 8 + 9);
    }
  });

  it("shares out the whole prior", () => {
    expect(misreadOhms(4700).reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it("4.7 kohm: 47 kohm and 470 ohm by the multiplier, 1.7 and 4.2 kohm by a digit", () => {
    const values = misreadOhms(4700).map(({ ohms }) => Math.round(ohms));
    for (const ohms of [47, 470, 47e3, 470e3, 1700, 4200]) expect(values).toContain(ohms);
    expect(values).not.toContain(4700);
  });
});
