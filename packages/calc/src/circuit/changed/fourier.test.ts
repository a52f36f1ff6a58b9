import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Fourier } from "./fourier.ts";

const SIZES = [2, 3, 4, 6, 8, 12, 16, 24, 48, 96];

/** The sum that the transform stands for, term by term. */
function direct(re: Float64Array, im: Float64Array, sign: 1 | -1): { re: number; im: number }[] {
  const size = re.length;
  return Array.from({ length: size }, (_, m) => {
    let [sr, si] = [0, 0];
    for (let k = 0; k < size; k += 1) {
      const angle = (sign * 2 * Math.PI * k * m) / size;
      sr += re[k]! * Math.cos(angle) - im[k]! * Math.sin(angle);
      si += re[k]! * Math.sin(angle) + im[k]! * Math.cos(angle);
    }
    return { re: sr, im: si };
  });
}

const sequenceOf = (size: number) =>
  fc
    .array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 2 * size, maxLength: 2 * size })
    .map((list) => [Float64Array.from(list.slice(0, size)), Float64Array.from(list.slice(size))] as const);
const cases = fc
  .constantFrom(...SIZES)
  .chain((size) => fc.tuple(fc.constant(size), sequenceOf(size), fc.constantFrom(1 as const, -1 as const)));

describe("Fourier", () => {
  it.each(SIZES)("length %i: the sum, term by term, either way round", (size) => {
    fc.assert(
      fc.property(sequenceOf(size), fc.constantFrom(1 as const, -1 as const), ([re, im], sign) => {
        const expected = direct(re, im, sign);
        const [fr, fi] = [re.slice(), im.slice()];
        new Fourier(size).transform(fr, fi, sign);
        for (const [m, value] of expected.entries()) {
          expect(fr[m]).toBeCloseTo(value.re, 10);
          expect(fi[m]).toBeCloseTo(value.im, 10);
        }
      }),
      { numRuns: 5 },
    );
  });

  it("there and back is the length times the sequence", () => {
    fc.assert(
      fc.property(cases, ([size, [re, im], sign]) => {
        const [fr, fi] = [re.slice(), im.slice()];
        const fourier = new Fourier(size);
        fourier.transform(fr, fi, sign);
        fourier.transform(fr, fi, sign === 1 ? -1 : 1);
        for (let k = 0; k < size; k += 1) {
          expect(fr[k]! / size).toBeCloseTo(re[k]!, 11);
          expect(fi[k]! / size).toBeCloseTo(im[k]!, 11);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("a cosine of three turns in 48 steps has two lines, half of the length each", () => {
    const re = Float64Array.from({ length: 48 }, (_, k) => Math.cos((2 * Math.PI * 3 * k) / 48));
    const im = new Float64Array(48);
    new Fourier(48).transform(re, im, -1);
    for (let m = 0; m < 48; m += 1) {
      expect(re[m]).toBeCloseTo(m === 3 || m === 45 ? 24 : 0, 10);
      expect(im[m]).toBeCloseTo(0, 10);
    }
  });

  it("may be used again: it keeps nothing of what it has transformed", () => {
    const fourier = new Fourier(24);
    const once = () => {
      const [re, im] = [Float64Array.from({ length: 24 }, (_, k) => k % 5), new Float64Array(24)];
      fourier.transform(re, im, 1);
      return [...re, ...im];
    };
    expect(once()).toEqual(once());
  });
});
