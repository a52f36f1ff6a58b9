import { type Formula, type FormulaInput, type FormulaValues, readFormulaValue } from "@underchassis/calc/formulas";
import { closest } from "fastest-levenshtein";

export interface ReadInputs {
  values: FormulaValues;
  /** What is wrong with the arguments as they were written, one line each. */
  problems: readonly string[];
}

/** Whether a word is the symbol of an argument; of a list Rn it may be R, R1, R2 and so on. */
function isSymbol({ symbol, list }: FormulaInput, word: string): boolean {
  const stem = symbol.slice(0, -1);
  return word === symbol || (list === true && symbol.endsWith("n") && word.startsWith(stem) && /^\d*$/.test(word.slice(stem.length)));
}

/** The argument that a word names: its name in any capitals, or its symbol. */
function find(formula: Formula, word: string): readonly [string, FormulaInput] | undefined {
  const entries = Object.entries(formula.inputs);
  return entries.find(([name]) => name.toLowerCase() === word.toLowerCase()) ?? entries.find(([, input]) => isSymbol(input, word));
}

/**
 * Reads `name=value` words as the arguments of a formula. Names may be the formula's symbols; an argument that takes a list is
 * given several times.
 *
 * @returns values in SI base units, and every problem found; never throws
 */
export function readInputs(formula: Formula, words: readonly string[]): ReadInputs {
  const lists = new Map<string, number[]>();
  const problems: string[] = [];
  for (const word of words) {
    const at = word.indexOf("=");
    const [key, text] = [word.slice(0, at).trim(), word.slice(at + 1).trim()];
    if (at < 1 || text === "") {
      problems.push(`"${word}" is not name=value`);
      continue;
    }
    const found = find(formula, key);
    if (!found) {
      problems.push(`"${key}" is not an argument of ${formula.id}; did you mean "${closest(key, Object.keys(formula.inputs))}"?`);
      continue;
    }
    const [name, input] = found;
    const read = readFormulaValue(text, input.dimension);
    const list = lists.get(name) ?? [];
    lists.set(name, list);
    if (!read.ok) {
      const { message, expected, nearest } = read.problem;
      problems.push(`${name}: ${message}; expected ${expected}${nearest === undefined ? "" : `, perhaps "${nearest}"`}`);
    } else if (list.length > 0 && !input.list) problems.push(`${name} is given more than once`);
    else list.push(read.value);
  }
  const missing = Object.entries(formula.inputs).filter(([name, input]) => input.default === undefined && !lists.has(name));
  problems.push(...missing.map(([name, { meaning }]) => `${name} is missing: ${meaning}`));
  const values = Object.fromEntries([...lists].map(([name, list]) => [name, formula.inputs[name]?.list ? list : (list[0] ?? Number.NaN)]));
  return { values, problems };
}
