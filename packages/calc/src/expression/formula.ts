/** Functions of one or more numbers that a formula may call. */
export const FUNCTIONS: Readonly<Record<string, { least: number; most: number; of: (...values: number[]) => number }>> = {
  abs: { least: 1, most: 1, of: Math.abs },
  min: { least: 1, most: 20, of: Math.min },
  max: { least: 1, most: 20, of: Math.max },
  sqrt: { least: 1, most: 1, of: Math.sqrt },
  exp: { least: 1, most: 1, of: Math.exp },
  log: { least: 1, most: 1, of: Math.log },
  log10: { least: 1, most: 1, of: Math.log10 },
  pow: { least: 2, most: 2, of: (base, exponent) => base ** exponent },
};

export type Comparator = "<" | "<=" | ">" | ">=" | "==" | "!=";

/** What a formula reads off a point of the circuit: mean volts, or peak-to-peak ripple. */
export type PointQuantity = "volts" | "ripple";

/** A formula that gives a number. */
export type NumberExpression =
  | { kind: "number"; value: number }
  | { kind: "name"; name: string }
  | { kind: "point"; quantity: PointQuantity; point: string }
  | { kind: "negative"; of: NumberExpression }
  | { kind: "arithmetic"; operator: "+" | "-" | "*" | "/" | "^"; left: NumberExpression; right: NumberExpression }
  | { kind: "call"; function: string; values: readonly NumberExpression[] };

/** A formula that holds or does not. Both sides of a comparison are kept as they were written. */
export type TruthExpression =
  | { kind: "comparison"; operator: Comparator; left: NumberExpression; right: NumberExpression; leftText: string; rightText: string }
  | { kind: "both" | "either"; left: TruthExpression; right: TruthExpression }
  | { kind: "not"; of: TruthExpression };

export type Expression = NumberExpression | TruthExpression;

/** A formula that has been read and found to hold nothing but what the language allows. */
export interface Formula {
  text: string;
  gives: "number" | "truth";
  expression: Expression;
  /** Every name that it needs a value for, once, as `role.property` or a plain name. */
  names: readonly string[];
  /** Every point that it reads, once. */
  points: readonly { quantity: PointQuantity; point: string }[];
}

/** A formula cannot be read, or asks for something that the language does not have. */
export class FormulaError extends Error {
  readonly code: "syntax" | "not-allowed" | "kind" | "too-long";
  /** The piece that is refused, as written. */
  readonly received: string;
  /** Where that piece stands in the formula: 0-based offset and length; the whole formula where it cannot be told. */
  readonly at: { offset: number; length: number };
  constructor(
    code: FormulaError["code"],
    message: string,
    received: string,
    at: FormulaError["at"] = { offset: 0, length: received.length },
  ) {
    super(message);
    this.name = "FormulaError";
    this.code = code;
    this.received = received;
    this.at = at;
  }
}

export function givesTruth(expression: Expression): expression is TruthExpression {
  return expression.kind === "comparison" || expression.kind === "both" || expression.kind === "either" || expression.kind === "not";
}
