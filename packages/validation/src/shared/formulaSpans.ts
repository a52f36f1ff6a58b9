import type { Expression } from "@underchassis/calc/expression";

/** A stretch of a formula's text. */
export interface Stretch {
  offset: number;
  length: number;
}

/** Leaves of a formula as they stand in its text: numbers, names, points, in order. Names of functions and words of logic are none. */
const TOKENS =
  /(volts|ripple)\s*\(\s*(?:"[^"]*"|'[^']*')\s*\)|\b[A-Za-z_]\w*(?:\.\w+)*\b(\s*\()?|\d+\.?\d*(?:[eE][-+]?\d+)?|\.\d+(?:[eE][-+]?\d+)?/g;
const WORDS = new Set(["and", "or", "not"]);

/** Where every node of a formula stands in its text. Undefined where the text reads a leaf twice (`a < b < c`), so that no place is sure. */
export function formulaSpans(text: string, expression: Expression): ((node: Expression) => Stretch) | undefined {
  const tokens: Stretch[] = [];
  for (const match of text.matchAll(TOKENS)) {
    if (match[2] !== undefined || WORDS.has(match[0])) continue;
    tokens.push({ offset: match.index, length: match[0].length });
  }
  const spans = new Map<Expression, Stretch>();
  let next = 0;
  const visit = (node: Expression): Stretch | undefined => {
    const children = childrenOf(node);
    if (children.length === 0) {
      const token = tokens[next++];
      if (token !== undefined) spans.set(node, token);
      return token;
    }
    const parts = children.map(visit);
    const [first, last] = [parts[0], parts.at(-1)];
    if (first === undefined || last === undefined) return undefined;
    const span = { offset: first.offset, length: last.offset + last.length - first.offset };
    spans.set(node, span);
    return span;
  };
  visit(expression);
  return next === tokens.length ? (node) => spans.get(node) ?? { offset: 0, length: text.length } : undefined;
}

/** What a node is made of, left to right. */
export function childrenOf(node: Expression): readonly Expression[] {
  switch (node.kind) {
    case "number":
    case "name":
    case "point":
      return [];
    case "negative":
    case "not":
      return [node.of];
    case "call":
      return node.values;
    case "arithmetic":
    case "comparison":
    case "both":
    case "either":
      return [node.left, node.right];
  }
}

/** Every place of a name in a formula's text, not inside a longer name or a point's quotes. */
export function placesOfName(text: string, name: string): Stretch[] {
  const pattern = new RegExp(`"[^"]*"|'[^']*'|(?<![\\w.])${name.replace(/\./g, "\\.")}(?![\\w.])`, "g");
  return [...text.matchAll(pattern)].flatMap((match) => (/^["']/.test(match[0]) ? [] : [{ offset: match.index, length: match[0].length }]));
}

/** Every place of a point's name in a formula's text, without its quote marks. */
export function placesOfPoint(text: string, point: string): Stretch[] {
  return [...text.matchAll(/(["'])([^"']*)\1/g)].flatMap((match) =>
    match[2] === point ? [{ offset: match.index + 1, length: point.length }] : [],
  );
}
