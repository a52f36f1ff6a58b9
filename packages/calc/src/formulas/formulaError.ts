/** Why a formula gives no result: which argument (or result), its value, and the limit that it breaks. */
export class FormulaError extends Error {
  override name = "FormulaError";
  readonly formula: string;
  readonly argument: string;
  /** In SI base units; undefined when the argument is missing or unknown. */
  readonly value: number | undefined;
  /** In words: "must be above 0 ohm". */
  readonly limit: string;

  constructor(formula: string, argument: string, value: number | undefined, shown: string | undefined, limit: string) {
    super(`${formula}: ${argument}${shown === undefined ? "" : ` is ${shown};`} ${limit}`);
    this.formula = formula;
    this.argument = argument;
    this.value = value;
    this.limit = limit;
  }
}
