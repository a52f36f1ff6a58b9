import { type Expression, type NumberExpression, parseFormula, unitOf } from "@underchassis/calc/expression";
import { childrenOf } from "./formulaSpans.ts";

/** What a plain number may stand for without saying so: a quantity in a base unit, or the perveance of a tube. */
const QUANTITIES: readonly Expression[] = [
  "x.ratedVolts",
  "x.meanAmps",
  "x.ohms",
  "x.farads",
  "x.henries",
  "x.ratedWatts",
  "lineHertz",
  "riseSeconds",
  "dropSiemens",
  "x.meanAmps / x.ratedVolts ^ 1.5",
].map((text) => parseFormula(text).expression);
/** More numbers than this are not tried out. */
const MOST = 6;

/**
 * Whether a formula's units come right once one or two of its numbers are taken as quantities: `0.0465 * cathodeResistor.ohms` is a
 * voltage if the number is a current. In requirements, numbers that look like factors (1.1, 0.2, 2, 10) are not taken so, since a margin is
 * what they are; the numbers of an expected figure are its typical currents and voltages, and a simulation holds what comes out.
 *
 * @param root - the formula
 * @param wanted - truth: a requirement, number: an expected figure
 * @param fits - whether the units of a formula are right
 */
export function rightWithUnsaidUnits(root: Expression, wanted: "truth" | "number", fits: (formula: Expression) => boolean): boolean {
  const numbers = numbersIn(root).filter((node) => !(wanted === "truth" ? isFactor(node.value) : isConstant(node.value)));
  if (numbers.length === 0 || numbers.length > MOST) return false;
  const singles = numbers.flatMap((number) => QUANTITIES.map((quantity) => replaced(root, number, quantity)));
  if (singles.some(fits)) return true;
  return numbers.some((_, index) =>
    numbers
      .slice(index + 1)
      .some((second) =>
        singles
          .slice(index * QUANTITIES.length, (index + 1) * QUANTITIES.length)
          .some((once) => QUANTITIES.some((quantity) => fits(replaced(once, second, quantity)))),
      ),
  );
}

function numbersIn(node: Expression): Extract<Expression, { kind: "number" }>[] {
  return node.kind === "number" ? [node] : childrenOf(node).flatMap(numbersIn);
}

/** Whether a number may be a margin, a ratio, a count or a constant, rather than a quantity alone. */
export const isPlain = (value: number): boolean => isConstant(value) || isFactor(value);

/** What stands in formulas of every circuit. */
function isConstant(value: number): boolean {
  return value === 0 || value === 1 || value === 2 || Math.abs(value - Math.PI) < 1e-9;
}

/** Small round numbers, pi and its multiples: margins, ratios, counts. */
function isFactor(value: number): boolean {
  if (Math.abs(value - Math.PI) < 1e-9 || Math.abs(value - Math.SQRT2) < 1e-2) return true;
  return value === 0 || (value >= 0.01 && value <= 20 && Number(value.toPrecision(2)) === value);
}

/** The formula with one number, told by identity, made a quantity. */
function replaced(node: Expression, number: Expression, quantity: Expression): Expression {
  if (node === number) return quantity;
  const inside = <E extends Expression>(child: E): E => replaced(child, number, quantity) as E;
  switch (node.kind) {
    case "number":
    case "name":
    case "point":
      return node;
    case "negative":
      return { ...node, of: inside(node.of) };
    case "not":
      return { ...node, of: inside(node.of) };
    case "call":
      return { ...node, values: node.values.map(inside) };
    case "arithmetic":
      return { ...node, left: inside(node.left), right: inside(node.right) };
    case "comparison":
      return { ...node, left: inside(node.left), right: inside(node.right) };
    case "both":
    case "either":
      return { ...node, left: inside(node.left), right: inside(node.right) };
  }
}

/** Whether an expression gives a unit, taken strictly. */
export function gives(expression: Expression, unit: string): boolean {
  return unitOf(expression as NumberExpression) === unit;
}
