import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Curve } from "./curve.ts";

const rowsOf = (values: readonly number[]) => values.map((value) => Float64Array.of(value));

describe("Curve", () => {
  it("passes through its nodes, both ends of a part included", () => {
    const values = [0, 100, 470, 2200, Number.POSITIVE_INFINITY];
    const curve = new Curve(values, rowsOf([0, 3, 11, 12, 40]));
    for (const [k, read] of [0, 3, 11, 12, 40].entries()) expect(curve.at(values[k]!)[0]).toBeCloseTo(read, 9);
  });

  it("is straight for a divider whose other resistor is the middle of the nodes", () => {
    // 10 V over v and c: 10 / (1 + c / v). The geometric mean of 250, 1000 and 4000 is 1000.
    const divider = (v: number) => (v === 0 ? 0 : 10 / (1 + 1000 / v));
    const values = [0, 250, 1000, 4000, Number.POSITIVE_INFINITY];
    const curve = new Curve(values, rowsOf(values.map(divider)));
    for (const v of [10, 333, 1000, 2345, 1e5, 1e9]) expect(curve.at(v)[0]).toBeCloseTo(divider(v), 9);
  });

  it("holds the nearest end outside its values, and says what it covers", () => {
    const curve = new Curve([100, 1000, 10e3], rowsOf([1, 2, 5]));
    expect(curve.at(1)[0]).toBe(1);
    expect(curve.at(Number.POSITIVE_INFINITY)[0]).toBe(5);
    expect([100, 500, 10e3].map((value) => curve.covers(value))).toEqual([true, true, true]);
    expect([99, 0, 10.1e3, Number.POSITIVE_INFINITY].map((value) => curve.covers(value))).toEqual([false, false, false, false]);
  });

  it("joins two nodes by a straight line in v / (v + c), and stays at one", () => {
    // c = sqrt(100 * 400) = 200; abscissas 1/3 and 2/3, and that of 200 is half way.
    expect(new Curve([100, 400], rowsOf([1, 3])).at(200)[0]).toBeCloseTo(2, 12);
    expect(new Curve([100], rowsOf([7])).at(200)[0]).toBe(7);
  });

  it("interpolates every reading by itself", () => {
    const both = new Curve([100, 300, 900], [Float64Array.of(1, -5), Float64Array.of(2, 5), Float64Array.of(9, 4)]);
    const second = new Curve([100, 300, 900], rowsOf([-5, 5, 4]));
    expect(both.at(170)[1]).toBeCloseTo(second.at(170)[0]!, 12);
  });

  it("keeps monotone readings monotone, between their neighbours", () => {
    const steps = fc.array(
      fc.record({ factor: fc.double({ min: 1.05, max: 30, noNaN: true }), rise: fc.double({ min: 0, max: 100, noNaN: true }) }),
      {
        minLength: 3,
        maxLength: 9,
      },
    );
    fc.assert(
      fc.property(steps, fc.boolean(), (list, falling) => {
        let [value, read] = [10, 0];
        const [values, reads]: [number[], number[]] = [[], []];
        for (const { factor, rise } of list) {
          value *= factor;
          read += falling ? -rise : rise;
          values.push(value);
          reads.push(read);
        }
        const curve = new Curve(values, rowsOf(reads));
        const slack = 1e-9 * Math.max(1, Math.abs(read));
        for (let k = 1; k < values.length; k += 1) {
          let before = reads[k - 1]!;
          for (let t = 1; t <= 8; t += 1) {
            const now = curve.at(values[k - 1]! * (values[k]! / values[k - 1]!) ** (t / 8))[0]!;
            expect(falling ? before - now : now - before).toBeGreaterThanOrEqual(-slack);
            before = now;
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
