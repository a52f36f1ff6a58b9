import { evaluateFormula, parseFormula } from "@underchassis/calc/expression";
import type { StageTemplate } from "@underchassis/dataset";
import { stageValues } from "@underchassis/grading";
import type { SolvedVariant } from "./solvedVariants.ts";

/** An expected figure beside what the simulation reads. SI. */
export interface ExpectedOutcome {
  index: number;
  quantity: StageTemplate["expected"][number]["quantity"];
  low: number | undefined;
  high: number | undefined;
  /** Undefined where the simulation gives none. */
  simulated: number | undefined;
  /** What the formula gives, where there is one that can be worked out. */
  formula: number | undefined;
}

/** Every expected figure of a template, read in the simulation at the design line. */
export function outcomesOf({ model, stage }: SolvedVariant, { expected }: StageTemplate): ExpectedOutcome[] {
  return expected.flatMap(({ at, to, part, quantity, condition: id, low, high, formula }, index): ExpectedOutcome[] => {
    const condition = model.conditions.get(id);
    if (condition === undefined) return [];
    const probe = part === undefined ? stage.points[at ?? ""] : stage.parts[part];
    const against = to === undefined ? model.reference : (stage.points[to] ?? to);
    const prediction = model.predict({ life: "designed", condition: id, line: "design" }, { quantity, at: probe ?? "", to: against });
    const value =
      formula === undefined
        ? undefined
        : evaluateFormula(parseFormula(formula), stageValues(model, stage, "designed", condition, "design")).value;
    return [{ index, quantity, low, high, simulated: prediction?.nominal, formula: typeof value === "number" ? value : undefined }];
  });
}
