import type { NumberExpression } from "./formula.ts";

/** Exponents of volt, ampere and second; every unit of the formulas is a product of these. */
type Exponents = readonly [volts: number, amps: number, seconds: number];

/** A bare number: it fits any unit where it is added or compared (`<= 40000` beside ohms), and has none where it multiplies. */
const ANY = "any";
/** Two units that cannot be added or compared. */
const MIXED = "mixed";
type UnitResult = Exponents | typeof ANY | typeof MIXED;

const SYMBOLS: Readonly<Record<string, Exponents>> = {
  V: [1, 0, 0],
  A: [0, 1, 0],
  s: [0, 0, 1],
  Hz: [0, 0, -1],
  ohm: [1, -1, 0],
  S: [-1, 1, 0],
  F: [-1, 1, 1],
  H: [1, -1, 1],
  W: [1, 1, 0],
  J: [1, 1, 1],
};

/** Symbols of the units that formulas reckon with. */
export const UNIT_SYMBOLS: readonly string[] = Object.keys(SYMBOLS);

/** Endings of property names and the unit that they say. */
const ENDINGS: readonly (readonly [RegExp, Exponents])[] = [
  [/volts$/i, SYMBOLS.V!],
  [/amps$/i, SYMBOLS.A!],
  [/ohms$/i, SYMBOLS.ohm!],
  [/farads$/i, SYMBOLS.F!],
  [/henries$/i, SYMBOLS.H!],
  [/watts$/i, SYMBOLS.W!],
  [/joules$/i, SYMBOLS.J!],
  [/hertz$/i, SYMBOLS.Hz!],
  [/seconds$/i, SYMBOLS.s!],
  [/siemens$/i, SYMBOLS.S!],
];

/**
 * Base unit of a formula that gives a number: "V", "ohm", "Hz" ..., "" for a bare ratio or number, and for a unit without a
 * symbol of its own. Undefined when it adds or compares unlike things (volts to ohms).
 */
export function unitOf(...sides: readonly NumberExpression[]): string | undefined {
  const result = sides.map(exponents).reduce(alike);
  if (result === MIXED) return undefined;
  if (result === ANY) return "";
  return Object.entries(SYMBOLS).find(([, symbol]) => same(symbol, result))?.[0] ?? "";
}

const same = (a: Exponents, b: Exponents): boolean => a.every((value, index) => Math.abs(value - (b[index] ?? 0)) < 1e-9);

function alike(a: UnitResult, b: UnitResult): UnitResult {
  if (a === MIXED || b === MIXED) return MIXED;
  if (a === ANY) return b;
  if (b === ANY) return a;
  return same(a, b) ? a : MIXED;
}

function combine(a: UnitResult, b: UnitResult, sign: 1 | -1): UnitResult {
  if (a === MIXED || b === MIXED) return MIXED;
  if (a === ANY && b === ANY) return ANY;
  const none: Exponents = [0, 0, 0];
  const [left, right] = [a === ANY ? none : a, b === ANY ? none : b];
  return [left[0] + sign * right[0], left[1] + sign * right[1], left[2] + sign * right[2]];
}

function raised(base: UnitResult, power: number | undefined): UnitResult {
  if (base === ANY || base === MIXED) return base;
  if (power === undefined) return same(base, [0, 0, 0]) ? base : MIXED;
  return [base[0] * power, base[1] * power, base[2] * power];
}

/** A power that is plain numbers only. */
function plainNumber(expression: NumberExpression): number | undefined {
  if (expression.kind === "number") return expression.value;
  if (expression.kind === "negative") {
    const value = plainNumber(expression.of);
    return value === undefined ? undefined : -value;
  }
  if (expression.kind !== "arithmetic" || expression.operator !== "/") return undefined;
  const [left, right] = [plainNumber(expression.left), plainNumber(expression.right)];
  return left === undefined || right === undefined ? undefined : left / right;
}

function exponents(expression: NumberExpression): UnitResult {
  switch (expression.kind) {
    case "number":
      return ANY;
    case "point":
      return SYMBOLS.V!;
    case "name":
      return ENDINGS.find(([ending]) => ending.test(expression.name))?.[1] ?? [0, 0, 0];
    case "negative":
      return exponents(expression.of);
    case "arithmetic": {
      if (expression.operator === "^") return raised(exponents(expression.left), plainNumber(expression.right));
      const [left, right] = [exponents(expression.left), exponents(expression.right)];
      if (expression.operator === "+" || expression.operator === "-") return alike(left, right);
      return combine(left, right, expression.operator === "*" ? 1 : -1);
    }
    case "call": {
      const given = expression.values.map(exponents);
      if (expression.function === "sqrt") return raised(given[0] ?? ANY, 0.5);
      if (expression.function === "pow")
        return raised(given[0] ?? ANY, expression.values[1] === undefined ? undefined : plainNumber(expression.values[1]));
      if (expression.function === "abs" || expression.function === "min" || expression.function === "max") return given.reduce(alike);
      // exp and logarithms take and give bare numbers.
      return alike(given[0] ?? ANY, [0, 0, 0]);
    }
  }
}
