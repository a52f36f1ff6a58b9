import { type Expression, FUNCTIONS } from "./formula.ts";

/** What a formula of plain numbers comes to; undefined when it needs the value of a name or point, or gives no number. */
export function constantOf(expression: Expression): number | undefined {
  switch (expression.kind) {
    case "number":
      return expression.value;
    case "negative": {
      const value = constantOf(expression.of);
      return value === undefined ? undefined : -value;
    }
    case "arithmetic": {
      const [left, right] = [constantOf(expression.left), constantOf(expression.right)];
      if (left === undefined || right === undefined) return undefined;
      return { "+": left + right, "-": left - right, "*": left * right, "/": left / right, "^": left ** right }[expression.operator];
    }
    case "call": {
      const values = expression.values.map(constantOf);
      return values.every((value) => value !== undefined) ? FUNCTIONS[expression.function]?.of(...values) : undefined;
    }
    default:
      return undefined;
  }
}
