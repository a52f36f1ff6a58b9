import type { MathNode } from "mathjs";
import mathjs from "mathjs/lib/browser/math.js";
import { constantOf } from "./constantOf.ts";
import {
  type Comparator,
  type Expression,
  type Formula,
  FormulaError,
  FUNCTIONS,
  givesTruth,
  type NumberExpression,
  type TruthExpression,
} from "./formula.ts";
import { placeInFormula } from "./placeInFormula.ts";
import { refusedText } from "./refusedText.ts";
import { UNIT_SYMBOLS } from "./unitOf.ts";

/** Longer formulas than this are refused; the schema of stage templates allows 300. */
const LONGEST = 1000;
const DEEPEST = 60;
/** No more of a refused piece is shown. */
const LONGEST_SHOWN = 300;

// Only the parser is made: there is nothing in it that could evaluate.
const math = mathjs.create(mathjs.parseDependencies ?? {});

const COMPARATORS: Readonly<Record<string, Comparator>> = {
  smaller: "<",
  smallerEq: "<=",
  larger: ">",
  largerEq: ">=",
  equal: "==",
  unequal: "!=",
};
const ARITHMETIC: Readonly<Record<string, "+" | "-" | "*" | "/" | "^">> = { add: "+", subtract: "-", multiply: "*", divide: "/", pow: "^" };
const LOGIC: Readonly<Record<string, "both" | "either">> = { and: "both", or: "either" };
const CONSTANTS: ReadonlyMap<string, number> = new Map([["pi", Math.PI]]);

/** The nodes of the parser's tree that the language knows, with the fields that are read from them. */
type Read = MathNode & {
  type: string;
  value?: unknown;
  name?: string;
  fn?: string | Read;
  implicit?: boolean;
  args?: Read[];
  content?: Read;
  object?: Read;
  index?: Read;
  dimensions?: Read[];
  conditionals?: string[];
  params?: Read[];
};

/**
 * Reads a formula: numbers, `+ - * / ^`, comparisons (chains too), `and`, `or`, `not`, parentheses, the functions
 * abs min max sqrt exp log log10 pow, `pi`, names, `role.property`, `volts("point")` and `ripple("point")`. Anything else that the
 * parser knows (assignments, units, matrices, ranges, text, other functions) is refused by name; nothing of it can run.
 *
 * @throws FormulaError saying what is refused
 */
export function parseFormula(text: string): Formula {
  if (text.length > LONGEST)
    throw new FormulaError("too-long", `a formula has at most ${LONGEST} characters`, `${text.slice(0, 40)}...`, {
      offset: LONGEST,
      length: text.length - LONGEST,
    });
  if (text.trim() === "") throw new FormulaError("syntax", "an empty formula", text);
  const refusedPiece = refusedText(text);
  if (refusedPiece !== undefined) {
    const { message, ...at } = refusedPiece;
    throw new FormulaError("not-allowed", message, text.slice(at.offset, at.offset + at.length), at);
  }
  const names = new Set<string>();
  const points = new Map<string, Formula["points"][number]>();
  const expression = placed(text, () => new Reader(names, points).read(parsed(text), 0));
  return { text, gives: givesTruth(expression) ? "truth" : "number", expression, names: [...names], points: [...points.values()] };
}

/** Does the reading, and gives what is refused its place in the text. */
function placed(text: string, read: () => Expression): Expression {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    throw new FormulaError(
      error.code,
      error.message,
      error.received,
      placeInFormula(text, error.received, error.code === "syntax" ? error.message : ""),
    );
  }
}

function parsed(text: string): Read {
  try {
    return math.parse(text) as unknown as Read;
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    throw new FormulaError("syntax", `not a formula: ${words.replace(/^Invalid left hand side of assignment operator =/, COMPARE)}`, text);
  }
}

const COMPARE = "a single = compares nothing; there are ==, !=, <=, >=, < and >";

class Reader {
  readonly #names: Set<string>;
  readonly #points: Map<string, Formula["points"][number]>;

  constructor(names: Set<string>, points: Map<string, Formula["points"][number]>) {
    this.#names = names;
    this.#points = points;
  }

  read(node: Read, depth: number): Expression {
    if (depth > DEEPEST) throw new FormulaError("too-long", `more than ${DEEPEST} levels of nesting`, node.toString().slice(0, 40));
    switch (node.type) {
      case "ParenthesisNode":
        return this.read(node.content!, depth + 1);
      case "ConstantNode":
        if (typeof node.value !== "number" || !Number.isFinite(node.value)) throw refused("only numbers can stand by themselves", node);
        return { kind: "number", value: node.value };
      case "SymbolNode":
        return this.#name(node);
      case "AccessorNode":
        return this.#property(node);
      case "OperatorNode":
        return this.#operator(node, depth + 1);
      case "RelationalNode":
        return this.#chain(node, depth + 1);
      case "FunctionNode":
        return this.#call(node, depth + 1);
      default:
        throw refused(`${node.type.replace(/Node$/, "").toLowerCase()} expressions are not part of the language`, node);
    }
  }

  #number(node: Read, depth: number): NumberExpression {
    const read = this.read(node, depth);
    if (givesTruth(read)) throw new FormulaError("kind", `a number is needed where "${node.toString()}" stands`, node.toString());
    return read;
  }

  #truth(node: Read, depth: number): TruthExpression {
    const read = this.read(node, depth);
    if (!givesTruth(read)) throw new FormulaError("kind", `a comparison is needed where "${node.toString()}" stands`, node.toString());
    return read;
  }

  #name(node: Read): NumberExpression {
    const name = node.name ?? "";
    const constant = CONSTANTS.get(name);
    if (constant !== undefined) return { kind: "number", value: constant };
    if (!isName(name)) throw refused(`"${name}" is no name of a quantity`, node);
    this.#names.add(name);
    return { kind: "name", name };
  }

  /** role.property; the parser also accepts role["property"], which is the same tree and the same meaning. */
  #property(node: Read): NumberExpression {
    const role = node.object?.type === "SymbolNode" ? node.object.name : undefined;
    const dimensions = node.index?.dimensions ?? [];
    const property = dimensions.length === 1 && dimensions[0]?.type === "ConstantNode" ? dimensions[0].value : undefined;
    if (role === undefined || typeof property !== "string" || !isName(role) || !isName(property)) {
      throw refused("only role.property can be read", node);
    }
    const name = `${role}.${property}`;
    this.#names.add(name);
    return { kind: "name", name };
  }

  #operator(node: Read, depth: number): Expression {
    const [first, second] = node.args ?? [];
    const operation = String(node.fn);
    if (first === undefined || node.implicit === true)
      throw refused(
        isUnit(second) ? "units are not written: figures stand in SI units, 0.005 for 5 mA" : "multiplication needs its sign",
        node,
      );
    if (second === undefined) {
      if (operation === "unaryMinus") return { kind: "negative", of: this.#number(first, depth) };
      if (operation === "unaryPlus") return this.#number(first, depth);
      if (operation === "not") return { kind: "not", of: this.#truth(first, depth) };
      throw refused(`the operator "${operation}" is not part of the language`, node);
    }
    const logic = Object.hasOwn(LOGIC, operation) ? LOGIC[operation] : undefined;
    if (logic !== undefined) return { kind: logic, left: this.#truth(first, depth), right: this.#truth(second, depth) };
    if (Object.hasOwn(COMPARATORS, operation)) return this.#comparison(operation, first, second, depth);
    const operator = Object.hasOwn(ARITHMETIC, operation) ? ARITHMETIC[operation] : undefined;
    if (operator === undefined) throw refused(`the operator "${operation}" is not part of the language`, node);
    return finite({ kind: "arithmetic", operator, left: this.#number(first, depth), right: this.#number(second, depth) }, node);
  }

  #comparison(operation: string, left: Read, right: Read, depth: number): TruthExpression {
    const operator = Object.hasOwn(COMPARATORS, operation) ? COMPARATORS[operation] : undefined;
    if (operator === undefined) throw refused(`the comparison "${operation}" is not part of the language`, left);
    return {
      kind: "comparison",
      operator,
      left: this.#number(left, depth),
      right: this.#number(right, depth),
      leftText: left.toString(),
      rightText: right.toString(),
    };
  }

  /** a < b < c is a < b and b < c. */
  #chain(node: Read, depth: number): TruthExpression {
    const params = node.params ?? [];
    const links = (node.conditionals ?? []).map((operation, index) =>
      this.#comparison(operation, params[index]!, params[index + 1]!, depth),
    );
    return links.reduce((left, right) => ({ kind: "both", left, right }));
  }

  #call(node: Read, depth: number): NumberExpression {
    const name = typeof node.fn === "object" && node.fn.type === "SymbolNode" ? (node.fn.name ?? "") : "";
    const args = node.args ?? [];
    if (name === "volts" || name === "ripple") {
      const point = args.length === 1 && args[0]?.type === "ConstantNode" ? args[0].value : undefined;
      if (typeof point !== "string" || point === "") throw refused(`${name} takes the name of one point in quotes`, node);
      this.#points.set(`${name} ${point}`, { quantity: name, point });
      return { kind: "point", quantity: name, point };
    }
    const known = Object.hasOwn(FUNCTIONS, name) ? FUNCTIONS[name] : undefined;
    if (known === undefined)
      throw refused(
        `there is no function "${name || node.toString()}"; there are ${Object.keys(FUNCTIONS).join(", ")}, volts and ripple`,
        node,
      );
    if (args.length < known.least || args.length > known.most)
      throw refused(`${name} takes ${known.least === known.most ? known.least : `${known.least} to ${known.most}`} values`, node);
    return finite({ kind: "call", function: name, values: args.map((argument) => this.#number(argument, depth)) }, node);
  }
}

/** A unit, perhaps with a prefix. */
const UNIT = new RegExp(`^[pnumkM]?(?:${UNIT_SYMBOLS.join("|")}|ohms)$`);
const isUnit = (node: Read | undefined): boolean => node?.type === "SymbolNode" && UNIT.test(node.name ?? "");

/** What every object of the language underneath has by birth is no name of ours: `constructor`, `toString`. */
const isName = (name: string): boolean => /^[a-z][A-Za-z0-9]*$/.test(name) && !(name in Object.prototype);

/** Plain numbers that come to no finite number (9^9^9^9, 1/0) are a slip or an attack. */
function finite(expression: NumberExpression, node: Read): NumberExpression {
  const value = constantOf(expression);
  if (value !== undefined && !Number.isFinite(value)) throw refused("these numbers come to no finite number", node);
  return expression;
}

function refused(message: string, node: Read): FormulaError {
  return new FormulaError("not-allowed", message, node.toString().slice(0, LONGEST_SHOWN));
}
