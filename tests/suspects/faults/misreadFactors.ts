/** What becomes of a resistor whose bands were misread by one: the next multiplier, or another value of the E12 series with one digit the same. */
const E12 = [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82];

/** Factors on the right value; a multiplier counts as often as all digits together. */
export function misreadFactors(ohms: number): number[] {
  const decade = 10 ** (Math.floor(Math.log10(ohms) + 1e-9) - 1);
  const two = Math.round(ohms / decade);
  const [first, second] = [Math.floor(two / 10), two % 10];
  const digits = E12.filter((other) => other !== two && (Math.floor(other / 10) === first || other % 10 === second)).map(
    (other) => other / two,
  );
  const multipliers = [0.1, 10];
  const repeats = Math.max(1, Math.round(digits.length / multipliers.length));
  return [...digits, ...Array.from({ length: repeats }, () => multipliers).flat()];
}
