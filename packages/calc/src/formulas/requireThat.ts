/** A limit between two arguments, or of a result, that a formula's body found broken. `defineFormula` names the formula. */
export class BrokenLimit extends Error {
  readonly argument: string;
  readonly value: number;
  readonly limit: string;

  constructor(argument: string, value: number, limit: string) {
    super(limit);
    this.argument = argument;
    this.value = value;
    this.limit = limit;
  }
}

/**
 * Holds a limit that involves more than one argument.
 *
 * @param limit in words: "must be below supplyVolts"
 */
export function requireThat(holds: boolean, argument: string, value: number, limit: string): void {
  if (!holds) throw new BrokenLimit(argument, value, limit);
}
