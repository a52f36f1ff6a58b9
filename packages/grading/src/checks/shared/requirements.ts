import { type Evaluated, evaluateFormula, type Formula, FormulaError, parseFormula } from "@underchassis/calc/expression";
import type { ChassisModel, Condition, Life, Stage } from "../../model/index.ts";
import { stageValues } from "./stageValues.ts";
import { poweredConditions } from "./stress.ts";

export type Requirement = Stage["template"]["requirements"][number];

/** A rule worked out in the condition that decides. */
export interface Outcome {
  condition: Condition;
  evaluated: Evaluated;
}

const formulas = new Map<string, Formula | FormulaError>();

/** A rule's formula, or why it cannot be read. Formulas are text of the dataset; each is read once. */
export function readRequirement(requirement: Requirement): Formula | FormulaError {
  const known = formulas.get(requirement.formula);
  if (known !== undefined) return known;
  let result: Formula | FormulaError;
  try {
    result = parseFormula(requirement.formula);
    if (result.gives !== "truth") result = new FormulaError("kind", "a requirement is a comparison", requirement.formula);
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    result = error;
  }
  formulas.set(requirement.formula, result);
  return result;
}

/** Roles that a formula speaks of; asking only whether one is present does not count. */
export function rolesOf(formula: Formula): string[] {
  return [
    ...new Set(formula.names.filter((name) => name.includes(".") && !name.endsWith(".present")).map((name) => name.split(".")[0] ?? "")),
  ];
}

/**
 * A rule at the highest line, in its own condition or in every powered one; the worst failure decides, else the last condition in
 * which it could be worked out. Undefined when the chassis has none of the parts that the rule is about.
 */
export function outcomeOf(model: ChassisModel, stage: Stage, life: Life, requirement: Requirement, formula: Formula): Outcome | undefined {
  const conditions =
    requirement.condition === undefined
      ? poweredConditions(model)
      : [...model.conditions.values()].filter(({ id }) => id === requirement.condition);
  const outcomes = conditions.flatMap((condition): Outcome[] => {
    const values = stageValues(model, stage, life, condition, "high");
    return rolesOf(formula).every(values.has) ? [{ condition, evaluated: evaluateFormula(formula, values) }] : [];
  });
  const failing = outcomes.filter(({ evaluated }) => evaluated.value === false);
  return (
    failing.sort((a, b) => shortfall(b) - shortfall(a))[0] ??
    outcomes.findLast(({ evaluated }) => evaluated.value === true) ??
    outcomes.at(-1)
  );
}

/** How far the worst comparison is missed, as a share of its limit. */
function shortfall({ evaluated }: Outcome): number {
  return Math.max(
    0,
    ...evaluated.comparisons
      .filter(({ holds }) => holds === false)
      .map(({ left = 0, right = 0 }) => Math.abs(left - right) / Math.max(Math.abs(right), 1e-12)),
  );
}
