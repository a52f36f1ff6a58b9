import { CircuitError } from "./solution.ts";

/** Highest ratio of a source's frequency to the fundamental that one period is followed through. */
const HIGHEST_HARMONIC = 64;

/**
 * Fundamental frequency in hertz of a set of frequencies: the largest of which all are whole multiples.
 *
 * @param asked a fundamental laid down by the caller; every frequency must be a multiple of it
 * @returns 0 for no frequency at all
 * @throws CircuitError `bad-value` when they share no fundamental within 64 times
 */
export function fundamentalHertz(frequencies: readonly number[], asked?: number): number {
  if (frequencies.length === 0) return 0;
  const lowest = Math.min(...frequencies);
  const fits = (base: number): boolean =>
    frequencies.every((frequency) => {
      const ratio = frequency / base;
      return Math.round(ratio) >= 1 && ratio <= HIGHEST_HARMONIC + 0.5 && Math.abs(ratio - Math.round(ratio)) < 1e-9 * ratio;
    });
  if (asked !== undefined) {
    if (fits(asked)) return asked;
  } else {
    for (let divisor = 1; divisor <= HIGHEST_HARMONIC; divisor++) if (fits(lowest / divisor)) return lowest / divisor;
  }
  throw new CircuitError(
    "bad-value",
    `sources of ${frequencies.join(", ")} Hz share no ${asked === undefined ? "fundamental frequency" : `fundamental of ${asked} Hz`}`,
  );
}
