import {
  type Comparator,
  type Formula,
  FUNCTIONS,
  givesTruth,
  type NumberExpression,
  type PointQuantity,
  type TruthExpression,
} from "./formula.ts";
import { unitOf } from "./unitOf.ts";

/** Where the numbers of a formula come from. SI units; undefined when nobody knows. */
export interface FormulaValues {
  name(name: string): number | undefined;
  point(quantity: PointQuantity, point: string): number | undefined;
}

/** One comparison of a formula with the numbers on both sides; undefined where one is not known. */
export interface Compared {
  operator: Comparator;
  /** Base unit of both sides; of the left one where a plain number on the right carries a unit unsaid; "" for bare numbers. */
  unit: string;
  leftText: string;
  rightText: string;
  left: number | undefined;
  right: number | undefined;
  holds: boolean | undefined;
}

export interface Evaluated {
  /** The number, whether it holds, or undefined when that hangs on a value that nobody knows. */
  value: number | boolean | undefined;
  /** Every comparison in it, in the order written. */
  comparisons: readonly Compared[];
  /** Names and points without a value: `choke.ratedAmps`, `volts("tap")`. */
  missing: readonly string[];
}

/**
 * Works out a formula. A value that is not known makes its comparison undecided; `and` and `or` may still be decided by
 * their other side. A result that is no finite number (division by zero, root of a negative) counts as not known.
 */
export function evaluateFormula(formula: Formula, values: FormulaValues): Evaluated {
  const missing = new Set<string>();
  const comparisons: Compared[] = [];
  const number = (expression: NumberExpression): number | undefined => {
    const value = worked(expression);
    return value === undefined || !Number.isFinite(value) ? undefined : value;
  };
  const known = (value: number | undefined, name: string): number | undefined => {
    if (value === undefined || Number.isNaN(value)) missing.add(name);
    return value;
  };
  const worked = (expression: NumberExpression): number | undefined => {
    switch (expression.kind) {
      case "number":
        return expression.value;
      case "name":
        return known(values.name(expression.name), expression.name);
      case "point":
        return known(values.point(expression.quantity, expression.point), `${expression.quantity}("${expression.point}")`);
      case "negative": {
        const value = number(expression.of);
        return value === undefined ? undefined : -value;
      }
      case "arithmetic": {
        const [left, right] = [number(expression.left), number(expression.right)];
        return left === undefined || right === undefined ? undefined : arithmetic(expression.operator, left, right);
      }
      case "call": {
        const given = expression.values.map(number);
        return given.every((value) => value !== undefined) ? FUNCTIONS[expression.function]?.of(...given) : undefined;
      }
    }
  };
  const truth = (expression: TruthExpression): boolean | undefined => {
    switch (expression.kind) {
      case "comparison": {
        const [left, right] = [number(expression.left), number(expression.right)];
        const holds = left === undefined || right === undefined ? undefined : compare(expression.operator, left, right);
        const { operator, leftText, rightText } = expression;
        comparisons.push({
          operator,
          unit: unitOf(expression.left, expression.right) ?? unitOf(expression.left) ?? "",
          leftText,
          rightText,
          left,
          right,
          holds,
        });
        return holds;
      }
      case "not": {
        const holds = truth(expression.of);
        return holds === undefined ? undefined : !holds;
      }
      case "both":
      case "either": {
        // The value that settles the matter whatever the other side says.
        const settles = expression.kind === "either";
        const sides = [truth(expression.left), truth(expression.right)];
        if (sides.includes(settles)) return settles;
        return sides.includes(undefined) ? undefined : !settles;
      }
    }
  };
  const value = givesTruth(formula.expression) ? truth(formula.expression) : number(formula.expression);
  return { value, comparisons, missing: [...missing] };
}

function arithmetic(operator: "+" | "-" | "*" | "/" | "^", left: number, right: number): number {
  switch (operator) {
    case "+":
      return left + right;
    case "-":
      return left - right;
    case "*":
      return left * right;
    case "/":
      return left / right;
    case "^":
      return left ** right;
  }
}

function compare(operator: Comparator, left: number, right: number): boolean {
  switch (operator) {
    case "<":
      return left < right;
    case "<=":
      return left <= right;
    case ">":
      return left > right;
    case ">=":
      return left >= right;
    case "==":
      return left === right;
    case "!=":
      return left !== right;
  }
}
