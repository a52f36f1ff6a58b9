import { type Expression, type NumberExpression, unitOf } from "@underchassis/calc/expression";
import { childrenOf } from "./formulaSpans.ts";

/** Two things of a formula that do not go together. */
export interface UnitFault {
  /** The node to point at: the right one of two, or the argument. */
  node: Expression;
  message: string;
  expected: string;
  received: string;
}

const BARE = new Set(["exp", "log", "log10"]);

/** Whether a formula adds and compares only like things: a wrong unit inside makes every unit around it unknown. */
export function unitsFit(node: Expression): boolean {
  switch (node.kind) {
    case "comparison":
      return unitOf(node.left, node.right) !== undefined;
    case "both":
    case "either":
      return unitsFit(node.left) && unitsFit(node.right);
    case "not":
      return unitsFit(node.of);
    default:
      return unitOf(node) !== undefined;
  }
}

/** Where a formula adds, compares or takes the logarithm of unlike things; innermost first, and nothing about what only follows from that. */
export function unitFaults(node: Expression): UnitFault[] {
  const inner = childrenOf(node).flatMap(unitFaults);
  if (inner.length > 0) return inner;
  switch (node.kind) {
    case "comparison":
      return unlike(node.left, node.right, "compared");
    case "arithmetic":
      if (node.operator === "+" || node.operator === "-") return unlike(node.left, node.right, "added");
      return node.operator === "^" ? power(node, node.left, node.right) : [];
    case "call": {
      const [first, second] = node.values;
      if (first === undefined) return [];
      if (node.function === "min" || node.function === "max")
        return node.values.slice(1).flatMap((value) => unlike(first, value, `put into one ${node.function}`));
      if (BARE.has(node.function) && unitOf(node) === undefined)
        return [
          {
            node: first,
            message: `${node.function} of a quantity in ${named(first)}`,
            expected: "a bare number: divide by something in the same unit",
            received: named(first),
          },
        ];
      return node.function === "pow" && second !== undefined ? power(node, first, second) : [];
    }
    default:
      return [];
  }
}

function unlike(left: NumberExpression, right: NumberExpression, how: string): UnitFault[] {
  if (unitOf(left, right) !== undefined) return [];
  const [one, other] = [named(left), named(right)];
  return [{ node: right, message: `${one} and ${other} are ${how}`, expected: one, received: other }];
}

function power(node: NumberExpression, base: NumberExpression, exponent: NumberExpression): UnitFault[] {
  if (unitOf(node) !== undefined) return [];
  return [
    {
      node: exponent,
      message: `a quantity in ${named(base)} to a power that is no plain number`,
      expected: "a plain number as the power",
      received: named(exponent),
    },
  ];
}

/** A unit in words. */
function named(expression: NumberExpression): string {
  const unit = unitOf(expression);
  return unit === undefined || unit === "" ? "a bare number or compound unit" : (UNIT_WORDS[unit] ?? unit);
}

const UNIT_WORDS: Readonly<Record<string, string>> = {
  V: "volts",
  A: "amperes",
  s: "seconds",
  Hz: "hertz",
  ohm: "ohms",
  S: "siemens",
  F: "farads",
  H: "henries",
  W: "watts",
  J: "joules",
};

export const unitWords = (unit: string): string => UNIT_WORDS[unit] ?? "a bare number or compound unit";
