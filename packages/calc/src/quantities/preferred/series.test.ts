import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isPreferred, nearestPreferred, preferredSeries, type SeriesName } from "./series.ts";

// Lists as published, IEC 60063:2015 (reference sections 1.1 and 1.2; S3).
const e48 =
  "100 105 110 115 121 127 133 140 147 154 162 169 178 187 196 205 215 226 237 249 261 274 287 301 316 332 348 365 383 402 422 442 464 487 511 536 562 590 619 649 681 715 750 787 825 866 909 953";
const e96Adds =
  "102 107 113 118 124 130 137 143 150 158 165 174 182 191 200 210 221 232 243 255 267 280 294 309 324 340 357 374 392 412 432 453 475 499 523 549 576 604 634 665 698 732 768 806 845 887 931 976";
const e192Adds =
  "101 104 106 109 111 114 117 120 123 126 129 132 135 138 142 145 149 152 156 160 164 167 172 176 180 184 189 193 198 203 208 213 218 223 229 234 240 246 252 258 264 271 277 284 291 298 305 312 320 328 336 344 352 361 370 379 388 397 407 417 427 437 448 459 470 481 493 505 517 530 542 556 569 583 597 612 626 642 657 673 690 706 723 741 759 777 796 816 835 856 876 898 920 942 965 988";
const numbers = (list: string): number[] => list.split(" ").map(Number);
const merged = (...lists: string[]): number[] => lists.flatMap(numbers).sort((one, other) => one - other);

// Reference section 1.3: historic round value, nearest E24, nearest E12, E6 not below.
const historic: readonly (readonly [number, SeriesName, "nearest" | "up", number])[] = [
  [25, "E24", "nearest", 24],
  [25, "E12", "nearest", 27],
  [35, "E24", "nearest", 36],
  [35, "E12", "nearest", 33],
  [50, "E24", "nearest", 51],
  [50, "E12", "nearest", 47],
  [60, "E24", "nearest", 62],
  [60, "E12", "nearest", 56],
  [75, "E12", "nearest", 82],
  [8, "E6", "up", 10],
  [16, "E6", "up", 22],
  [12, "E6", "up", 15],
  [40, "E6", "up", 47],
  [80, "E6", "up", 100],
  [10, "E6", "up", 10],
  [125, "E12", "nearest", 120],
];

describe("preferred series", () => {
  it("are the published lists", () => {
    expect(preferredSeries.E3).toEqual([10, 22, 47]);
    expect(preferredSeries.E6).toEqual([10, 15, 22, 33, 47, 68]);
    expect(preferredSeries.E12).toEqual([10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82]);
    expect(preferredSeries.E48).toEqual(numbers(e48));
    expect(preferredSeries.E96).toEqual(merged(e48, e96Adds));
    expect(preferredSeries.E192).toEqual(merged(e48, e96Adds, e192Adds));
  });

  it.each(historic)("puts %d into %s, %s: %d", (value, series, direction, wanted) => {
    expect(nearestPreferred(value, series, direction)).toBe(wanted);
  });

  it("holds in every decade and brackets every value", () => {
    const names = Object.keys(preferredSeries) as SeriesName[];
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 1e9, noNaN: true }), fc.constantFrom(...names), (value, series) => {
        const [down, near, up] = (["down", "nearest", "up"] as const).map((direction) => nearestPreferred(value, series, direction)) as [
          number,
          number,
          number,
        ];
        expect(down).toBeLessThanOrEqual(value * (1 + 1e-12));
        expect(up).toBeGreaterThanOrEqual(value * (1 - 1e-12));
        expect([down, up]).toContain(near);
        for (const member of [down, near, up]) expect(isPreferred(member, series)).toBe(true);
      }),
    );
  });

  it("refuses what is not a size", () => {
    for (const value of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => nearestPreferred(value, "E12")).toThrow(RangeError);
    expect(isPreferred(0, "E12")).toBe(false);
    expect(isPreferred(470, "E96")).toBe(false);
  });
});
