/** The digits that are taken for one another when bands fade, and what taking one band for another makes of a value. */

const MULTIPLIERS = [0.01, 0.1, 10, 100] as const;

/**
 * Values that a resistor has when one band was misread or mistaken: another multiplier, or another digit in the first or second place.
 *
 * @param ohms the value that belongs there
 * @returns ohms, each once, without the right one; `share` of the prior: a multiplier is mistaken more often than a digit
 */
export function misreadOhms(ohms: number): { ohms: number; share: number }[] {
  const power = 10 ** (Math.floor(Math.log10(ohms)) - 1);
  const digits = Math.round(ohms / power);
  const [first, second] = [Math.floor(digits / 10), digits % 10];
  const out: { ohms: number; share: number }[] = MULTIPLIERS.map((factor) => ({ ohms: ohms * factor, share: 0.15 }));
  for (let digit = 0; digit < 10; digit += 1) {
    if (digit !== first && digit > 0) out.push({ ohms: (10 * digit + second) * power, share: 0.2 / 8 });
    if (digit !== second) out.push({ ohms: (10 * first + digit) * power, share: 0.2 / 9 });
  }
  return out;
}
