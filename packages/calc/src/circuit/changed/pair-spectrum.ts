/** Spectrum of first + i second, both real sequences given by their spectra up to half. */
export function pairSpectrum(
  spectra: Float64Array,
  stride: number,
  first: number,
  second: number,
  steps: number,
  re: Float64Array,
  im: Float64Array,
): void {
  for (let h = 0; h <= steps / 2; h++) {
    const at = stride * h;
    const [ar, ai] = [spectra[at + first]!, spectra[at + first + 1]!];
    const [br, bi] = [spectra[at + second]!, spectra[at + second + 1]!];
    re[h] = ar - bi;
    im[h] = ai + br;
    if (h === 0 || 2 * h === steps) {
      re[h] = ar;
      im[h] = br;
      continue;
    }
    re[steps - h] = ar + bi;
    im[steps - h] = br - ai;
  }
}
