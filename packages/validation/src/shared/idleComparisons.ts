import { type Compared, evaluateFormula, type Formula } from "@underchassis/calc/expression";

/** Enough that what fails for one draw in twenty is all but surely seen to fail. */
const DRAWS = 200;
/** One draw in so many takes values that are often equal, for comparisons that fail only where two things are alike. */
const TIE_EVERY = 4;
const TIES = [0, 1, 1, 10];
/** Decades below and above 1 that a magnitude is drawn from, evenly in its logarithm: picofarads lie well inside. */
const DECADES = 15;
/** What may stand on either side of zero; a point's volts may as well. */
const SIGNED = /\.(?:meanVolts|plateVolts|screenVolts|gridVolts)$/;

/**
 * The comparisons of a formula that hold whatever its names and points stand for, as they are written: `x >= 0.5 * x`; the whole formula
 * where only all of them together cannot fail. Found by drawing values, mean volts of either sign and everything else at zero or above; a
 * comparison that fails only in a sliver of what was drawn is taken for one that never fails.
 */
export function idleComparisons(formula: Formula): string[] {
  const random = generator(1);
  const failed = new Set<string>();
  const held = new Set<string>();
  let fails = false;
  for (let k = 0; k < DRAWS; k++) {
    const drawn = new Map<string, number>();
    const value = (key: string, signed: boolean): number => {
      const made = drawn.get(key) ?? draw(random, k % TIE_EVERY === 0, signed);
      drawn.set(key, made);
      return made;
    };
    const { value: truth, comparisons } = evaluateFormula(formula, {
      name: (name) => value(name, SIGNED.test(name)),
      point: (quantity, point) => value(`${quantity} ${point}`, quantity === "volts"),
    });
    if (truth === false) fails = true;
    for (const one of comparisons) if (one.holds !== undefined) (one.holds ? held : failed).add(textOf(one));
    if (fails && comparisons.every((one) => failed.has(textOf(one)))) return [];
  }
  const idle = [...held].filter((text) => !failed.has(text));
  return idle.length > 0 || fails || held.size === 0 ? idle : [formula.text];
}

const textOf = ({ leftText, operator, rightText }: Compared): string => `${leftText} ${operator} ${rightText}`;

function draw(random: () => number, tie: boolean, signed: boolean): number {
  const magnitude = tie ? (TIES[Math.floor(random() * TIES.length)] ?? 0) : 10 ** (DECADES * (2 * random() - 1));
  return signed && random() < 0.5 ? -magnitude : magnitude;
}

/** Numbers from 0 to 1, the same in every run: a linear congruential generator, its constants from memory (Numerical Recipes). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
