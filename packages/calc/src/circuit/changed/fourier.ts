/** Discrete Fourier transforms of one length, in place: a power of two, or three times one. */
export class Fourier {
  readonly size: number;
  private readonly binary: Binary;
  /** Cosines and sines of the turns that join three transforms to one. */
  private readonly cosines: Float64Array;
  private readonly sines: Float64Array;
  private readonly parts: readonly [re: Float64Array, im: Float64Array][];

  constructor(size: number) {
    this.size = size;
    const threefold = size % 3 === 0;
    this.binary = new Binary(threefold ? size / 3 : size);
    this.cosines = Float64Array.from({ length: size }, (_, k) => Math.cos((2 * Math.PI * k) / size));
    this.sines = Float64Array.from({ length: size }, (_, k) => Math.sin((2 * Math.PI * k) / size));
    this.parts = threefold ? [0, 1, 2].map(() => [new Float64Array(size / 3), new Float64Array(size / 3)]) : [];
  }

  /** x[m] becomes the sum over k of x[k] exp(sign 2 pi i k m / size); nothing is divided. */
  transform(re: Float64Array, im: Float64Array, sign: 1 | -1): void {
    if (this.parts.length === 0) {
      this.binary.transform(re, im, sign);
      return;
    }
    const { size, cosines, sines, parts } = this;
    const third = size / 3;
    for (let part = 0; part < 3; part++) {
      const [pr, pi] = parts[part]!;
      for (let k = 0; k < third; k++) {
        pr[k] = re[3 * k + part]!;
        pi[k] = im[3 * k + part]!;
      }
      this.binary.transform(pr, pi, sign);
    }
    const [ar, ai] = parts[0]!;
    const [br, bi] = parts[1]!;
    const [cr, ci] = parts[2]!;
    const half = (sign * Math.sqrt(3)) / 2;
    for (let k = 0; k < third; k++) {
      const wr = cosines[k]!;
      const wi = sign * sines[k]!;
      const ur = cosines[2 * k]!;
      const ui = sign * sines[2 * k]!;
      const xr = br[k]! * wr - bi[k]! * wi;
      const xi = br[k]! * wi + bi[k]! * wr;
      const yr = cr[k]! * ur - ci[k]! * ui;
      const yi = cr[k]! * ui + ci[k]! * ur;
      const sumRe = xr + yr;
      const sumIm = xi + yi;
      const middleRe = ar[k]! - sumRe / 2;
      const middleIm = ai[k]! - sumIm / 2;
      const turnRe = half * (xi - yi);
      const turnIm = half * (xr - yr);
      re[k] = ar[k]! + sumRe;
      im[k] = ai[k]! + sumIm;
      re[k + third] = middleRe - turnRe;
      im[k + third] = middleIm + turnIm;
      re[k + 2 * third] = middleRe + turnRe;
      im[k + 2 * third] = middleIm - turnIm;
    }
  }
}

/** Transforms whose length is a power of two. */
class Binary {
  private readonly size: number;
  private readonly cosines: Float64Array;
  private readonly sines: Float64Array;
  private readonly reversed: Int32Array;

  constructor(size: number) {
    this.size = size;
    this.cosines = Float64Array.from({ length: size / 2 }, (_, k) => Math.cos((2 * Math.PI * k) / size));
    this.sines = Float64Array.from({ length: size / 2 }, (_, k) => Math.sin((2 * Math.PI * k) / size));
    this.reversed = new Int32Array(size);
    for (let k = 1; k < size; k++) this.reversed[k] = (this.reversed[k >> 1]! >> 1) | ((k & 1) * (size >> 1));
  }

  transform(re: Float64Array, im: Float64Array, sign: 1 | -1): void {
    const { size, reversed, cosines, sines } = this;
    for (let k = 0; k < size; k++) {
      const other = reversed[k]!;
      if (other <= k) continue;
      const hr = re[k]!;
      const hi = im[k]!;
      re[k] = re[other]!;
      im[k] = im[other]!;
      re[other] = hr;
      im[other] = hi;
    }
    for (let half = 1; half < size; half *= 2) {
      const stride = size / (2 * half);
      for (let k = 0; k < half; k++) {
        const wr = cosines[k * stride]!;
        const wi = sign * sines[k * stride]!;
        for (let a = k; a < size; a += 2 * half) {
          const b = a + half;
          const tr = re[b]! * wr - im[b]! * wi;
          const ti = re[b]! * wi + im[b]! * wr;
          re[b] = re[a]! - tr;
          im[b] = im[a]! - ti;
          re[a] = re[a]! + tr;
          im[a] = im[a]! + ti;
        }
      }
    }
  }
}
