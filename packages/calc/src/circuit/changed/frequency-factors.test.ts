import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FrequencyFactors, type Pencil } from "./frequency-factors.ts";

const RE = Float64Array.of(1e-3, 5, 120);
const IM = Float64Array.of(0, 377, -754);

/** (G + s C) x at one place. */
function product({ size, conductances, stores }: Pencil, place: number, x: Float64Array): Float64Array {
  const out = new Float64Array(2 * size);
  for (let i = 0; i < size; i += 1)
    for (let j = 0; j < size; j += 1) {
      const [re, im] = [conductances[i * size + j]! + RE[place]! * stores[i * size + j]!, IM[place]! * stores[i * size + j]!];
      out[2 * i] = out[2 * i]! + re * x[2 * j]! - im * x[2 * j + 1]!;
      out[2 * i + 1] = out[2 * i + 1]! + re * x[2 * j + 1]! + im * x[2 * j]!;
    }
  return out;
}

/** A ladder of resistors and capacitors with a source's row, as networks are: sparse, a zero on the diagonal. */
const ladders = fc
  .tuple(
    fc.array(fc.double({ min: 1e-4, max: 1e-2, noNaN: true }), { minLength: 5, maxLength: 5 }),
    fc.array(fc.double({ min: 1e-7, max: 5e-5, noNaN: true }), { minLength: 5, maxLength: 5 }),
  )
  .map(([siemens, farads]): Pencil => {
    const size = 6;
    const [conductances, stores] = [new Float64Array(size * size), new Float64Array(size * size)];
    for (let k = 0; k < 5; k += 1) {
      stores[k * size + k] = farads[k]!;
      for (const [i, j, sign] of [
        [k, k, 1],
        [k + 1, k + 1, 1],
        [k, k + 1, -1],
        [k + 1, k, -1],
      ] as const)
        if (i < 5 && j < 5) conductances[i * size + j] = conductances[i * size + j]! + sign * siemens[k]!;
    }
    // Unknown 5 is the current of a source at point 0; row 5 holds its voltage.
    conductances[0 * size + 5] = 1;
    conductances[5 * size + 0] = 1;
    return { size, conductances, stores };
  });
const rights = fc
  .array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 })
  .map((list) => Float64Array.from(list));

describe("FrequencyFactors", () => {
  it("one capacitor and one resistor: 1 / (g + s c)", () => {
    const factors = new FrequencyFactors({ size: 1, conductances: Float64Array.of(1e-3), stores: Float64Array.of(10e-6) }, RE, IM);
    const column = factors.column(0);
    for (const [place, re] of RE.entries()) {
      const [gr, gi] = [1e-3 + re * 10e-6, IM[place]! * 10e-6];
      const square = gr ** 2 + gi ** 2;
      expect(column[2 * place]! * square).toBeCloseTo(gr, 12);
      expect(column[2 * place + 1]! * square).toBeCloseTo(-gi, 12);
    }
  });

  it("solves: the matrix times what it gives is the right side, at every place", () => {
    fc.assert(
      fc.property(ladders, rights, (pencil, right) => {
        const factors = new FrequencyFactors(pencil, RE, IM);
        expect(factors.regular).toBe(true);
        const out = new Float64Array(2 * pencil.size + 2);
        for (let place = 0; place < factors.places; place += 1) {
          factors.solve(place, right, out, 2);
          const x = out.subarray(2);
          const back = product(pencil, place, x);
          // Rounding against the largest unknown: conductances are of the order of one at most.
          const scale = Math.max(1, ...x.map(Math.abs));
          for (let k = 0; k < right.length; k += 1) expect(Math.abs(back[k]! - right[k]!)).toBeLessThan(1e-11 * scale);
        }
        expect([out[0], out[1]]).toEqual([0, 0]);
      }),
      { numRuns: 60 },
    );
  });

  it("columns of the inverse answer a unit in their row, and are worked out once", () => {
    fc.assert(
      fc.property(ladders, fc.integer({ min: 0, max: 5 }), (pencil, row) => {
        const factors = new FrequencyFactors(pencil, RE, IM);
        const column = factors.column(row);
        expect(factors.column(row)).toBe(column);
        const unit = new Float64Array(12);
        unit[2 * row] = 1;
        const out = new Float64Array(12);
        for (let place = 0; place < 3; place += 1) {
          factors.solve(place, unit, out, 0);
          expect([...column.subarray(12 * place, 12 * place + 12)]).toEqual([...out]);
        }
      }),
      { numRuns: 20 },
    );
  });

  it("says so where a point hangs on nothing", () => {
    const hanging = new FrequencyFactors({ size: 2, conductances: Float64Array.of(1, 0, 0, 0), stores: new Float64Array(4) }, RE, IM);
    expect(hanging.regular).toBe(false);
    // Two rows that say the same.
    const twice = new FrequencyFactors({ size: 2, conductances: Float64Array.of(1, -1, -1, 1), stores: new Float64Array(4) }, RE, IM);
    expect(twice.regular).toBe(false);
  });
});
