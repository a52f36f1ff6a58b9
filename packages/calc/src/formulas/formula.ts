import type { FormulaDimension } from "./dimensions.ts";

/** One argument of a formula, in SI base units. Without bounds any finite number goes. */
export interface FormulaInput {
  /** As it stands in the expression: "R1". */
  symbol: string;
  dimension: FormulaDimension;
  meaning: string;
  /** Smallest and largest value that the formula takes. */
  minimum?: number;
  maximum?: number;
  /** Bounds that the value must not reach. */
  above?: number;
  below?: number;
  /** Taken when the argument is not given. */
  default?: number;
  /** One or more values instead of one. */
  list?: true;
  /** Infinity is allowed: an open circuit. */
  open?: true;
  /** Whole numbers only. */
  whole?: true;
}

export interface FormulaOutput {
  symbol: string;
  dimension: FormulaDimension;
  meaning: string;
}

/** Arguments by name, in SI base units. */
export type FormulaValues = Readonly<Record<string, number | readonly number[]>>;

/** A formula of the handbooks with all that a reader needs to trust it. Inputs and results in SI base units. */
export interface Formula {
  /** Kebab case; the file and the export carry the same name in camel case. */
  readonly id: string;
  /** The folder that it lies in. */
  readonly area: string;
  readonly title: string;
  /** As text, in standard symbols. */
  readonly expression: string;
  readonly inputs: Readonly<Record<string, FormulaInput>>;
  readonly outputs: Readonly<Record<string, FormulaOutput>>;
  /** Where it holds and where it does not. */
  readonly limits: string;
  /** Source id of datasets/sources.csv. */
  readonly source: string;
  /**
   * Computes every output.
   *
   * @throws FormulaError for an argument that is unknown, missing or outside its limits, and for a result that is not finite
   */
  compute(inputs: FormulaValues): Record<string, number>;
}

type Inputs = Readonly<Record<string, FormulaInput>>;
type Value<I extends FormulaInput> = I extends { list: true } ? readonly number[] : number;
type Optional<I extends Inputs> = { [K in keyof I]: I[K] extends { default: number } ? K : never }[keyof I];

/** What a formula's body gets: every argument, defaults filled in. */
export type Given<I extends Inputs> = { readonly [K in keyof I]: Value<I[K]> };

/** What a caller gives: arguments with a default may be left out. */
export type Arguments<I extends Inputs> = Omit<Given<I>, Optional<I>> & Partial<Pick<Given<I>, Optional<I>>>;

/** A formula whose argument and result names the compiler knows. */
export interface TypedFormula<I extends Inputs, O extends string> extends Omit<Formula, "compute"> {
  readonly inputs: I;
  compute(inputs: Arguments<I>): Record<O, number>;
}
