import { FormulaError, parseFormula } from "@underchassis/calc/expression";
import type { RuleOfThumb, StageTemplate } from "@underchassis/dataset";
import type { RecordKind } from "../model/fileKind.ts";
import type { RecordFile, WrittenFormula } from "../model/subjects.ts";

type Parsed = WrittenFormula["parsed"];

/** Templates of a family repeat each other's formulas; these are read once. */
const known = new Map<string, Parsed>();
const KEPT = 2000;

/** Reads a formula, keeping what was read. */
function readFormula(text: string): Parsed {
  const earlier = known.get(text);
  if (earlier !== undefined) return earlier;
  let parsed: Parsed;
  try {
    const { expression, gives, names, points } = parseFormula(text);
    parsed = { ok: true, expression, gives, names, points: [...new Set(points.map(({ point }) => point))] };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    parsed = { ok: false, error };
  }
  if (known.size >= KEPT) known.clear();
  known.set(text, parsed);
  return parsed;
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
