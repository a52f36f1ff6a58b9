import { FormulaError, parseFormula } from "@underchassis/calc/expression";
import type { RuleOfThumb, StageTemplate } from "@underchassis/dataset";
import type { RecordKind } from "../model/fileKind.ts";
import type { RecordFile, WrittenFormula } from "../model/subjects.ts";
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
    return { ok: true, expression, gives, names, points: [...new Set(points.map(({ point }) => point))] };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { ok: false, error };
  }
}

const kept = new WeakMap<RecordFile, readonly WrittenFormula[]>();

/** The formulas of a record that fits its schema, in the order in which they stand; read once for all rules. */
export function formulasIn(record: RecordFile): readonly WrittenFormula[] {
  let formulas = kept.get(record);
  if (formulas === undefined) {
    formulas = formulasOf(record.kind, record.value);
    kept.set(record, formulas);
  }
  return formulas;
}

function formulasOf(kind: RecordKind, value: unknown): readonly WrittenFormula[] {
  if (kind === "stage") {
    const { expected, requirements } = value as StageTemplate;
    return [
      ...expected.flatMap(({ formula, quantity }, index): WrittenFormula[] =>
        formula === undefined
          ? []
          : [{ text: formula, path: ["expected", index, "formula"], wanted: "number", quantity, parsed: readFormula(formula) }],
      ),
      ...requirements.map(
        ({ formula }, index): WrittenFormula => ({
          text: formula,
          path: ["requirements", index, "formula"],
          wanted: "truth",
          parsed: readFormula(formula),
        }),
      ),
    ];
  }
  if (kind === "rule-of-thumb") {
    const { formula } = value as RuleOfThumb;
    if (formula === undefined) return [];
    const { expression } = formula;
    return [{ text: expression, path: ["formula", "expression"], wanted: "number", parsed: readFormula(expression) }];
  }
  return [];
}
