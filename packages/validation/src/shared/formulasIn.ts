import { FormulaError, parseFormula } from "@underchassis/calc/expression";
import type { RuleOfThumb, StageTemplate } from "@underchassis/dataset";
import type { Path } from "@underchassis/source-text";
import type { RecordKind } from "../model/fileKind.ts";
import type { FormulaNameParts, RecordFile, WrittenFormula } from "../model/subjects.ts";
import { shapeOf } from "./formulaShape.ts";

type Parsed = WrittenFormula["parsed"];

/** Templates of a family repeat each other's formulas, but for their figures; each shape is read once. */
const known = new Map<string, Parsed>();
const KEPT = 2000;

/** Reads a formula, keeping what was read of its shape. */
function readFormula(text: string): Parsed {
  const same = known.get(text);
  if (same !== undefined) return same;
  const shape = shapeOf(text);
  const alike = known.get(shape);
  if (alike !== undefined) return alike;
  const parsed = parse(shape);
  // What is wrong is told of the formula as it is written.
  if (!parsed.ok) return shape === text ? parsed : parse(text);
  if (known.size >= KEPT) known.clear();
  known.set(shape, parsed);
  return parsed;
}

function parse(text: string): Parsed {
  try {
    const { expression, gives, names, points } = parseFormula(text);
    return { ok: true, expression, gives, names: names.map(nameIn), points: [...new Set(points.map(({ point }) => point))] };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { ok: false, error };
  }
}

function nameIn(name: string): FormulaNameParts {
  const dot = name.indexOf(".");
  return dot < 0 ? { name } : { name, role: name.slice(0, dot), property: name.slice(dot + 1) };
}

/** The formulas of a record that fits its schema, in the order in which they stand; read once for all rules. */
export function formulasIn(record: RecordFile): readonly WrittenFormula[] {
  record.memo.formulas ??= formulasOf(record.kind, record.value);
  return record.memo.formulas;
}

function formulasOf(kind: RecordKind, value: unknown): readonly WrittenFormula[] {
  const formulas: WrittenFormula[] = [];
  const add = (text: string, wanted: "truth" | "number", path: Path, quantity?: string): void => {
    formulas.push({ text, path, wanted, parsed: readFormula(text), ...(quantity === undefined ? {} : { quantity }) });
  };
  if (kind === "stage") {
    const { expected, requirements } = value as StageTemplate;
    expected.forEach(({ formula, quantity }, index) => {
      if (formula !== undefined) add(formula, "number", ["expected", index, "formula"], quantity);
    });
    requirements.forEach(({ formula }, index) => {
      add(formula, "truth", ["requirements", index, "formula"]);
    });
  } else if (kind === "rule-of-thumb") {
    const { formula } = value as RuleOfThumb;
    if (formula !== undefined) add(formula.expression, "number", ["formula", "expression"]);
  }
  return formulas;
}
