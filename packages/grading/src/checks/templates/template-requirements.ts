import { type Compared, type Evaluated, evaluateFormula, type Formula, FormulaError, parseFormula } from "@underchassis/calc/expression";
import type { ChassisModel, Check, Condition, Figure, Finding, Life, Stage } from "../../model/index.ts";
import { atLeast, atMost, figure } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { joined, withUnit } from "../shared/phrases.ts";
import { stageValues } from "../shared/stageValues.ts";
import { poweredConditions } from "../shared/stress.ts";

type Requirement = Stage["template"]["requirements"][number];

interface Outcome {
  condition: Condition;
  evaluated: Evaluated;
}

/** Everything that a stage's template says must hold, run as it is written there. */
export const templateRequirements: Check = {
  id: "template-requirements",
  area: "templates",
  title: "What each stage's template requires",
  question: "Does every stage keep to the rules that its template gives for it?",
  needs: "stages with templates; ratings and measurements where a rule names them",
  sources: ["common-practice"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) => model.stages.flatMap((stage) => judgeStage(this, model, stage, life)));
  },
};

function judgeStage(check: Check, model: ChassisModel, stage: Stage, life: Life): Finding[] {
  const held: string[] = [];
  const findings: Finding[] = [];
  for (const requirement of stage.template.requirements) {
    const formula = read(requirement);
    if (formula instanceof FormulaError) {
      findings.push(unread(check, stage, life, requirement, formula));
      continue;
    }
    const outcome = outcomeOf(model, stage, life, requirement, formula);
    if (outcome === undefined || (life === "planned" && !planTouches(model, stage, formula, requirement, outcome))) continue;
    if (outcome.evaluated.value === true) held.push(requirement.title);
    else
      findings.push(
        outcome.evaluated.value === false
          ? broken(check, model, stage, life, requirement, formula, outcome)
          : unknown(check, stage, life, requirement, outcome),
      );
  }
  if (held.length > 0) {
    findings.push({
      check: check.id,
      severity: "good",
      life,
      stage: stage.id,
      title: `${stage.title}: ${held.length} of its template's rules hold`,
      found: joined(held),
      shouldBe: "as found",
      figures: [],
      why: "These are the rules particular to this kind of stage.",
      action: "Nothing to do.",
      cautions: [],
      sources: sourcesOf(stage, held),
      location: stage.location,
    });
  }
  return findings;
}

const formulas = new Map<string, Formula | FormulaError>();

/** Formulas are text of the dataset; each is read once. */
function read(requirement: Requirement): Formula | FormulaError {
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

const rolesOf = (formula: Formula): string[] =>
  formula.names.filter((name) => name.includes(".") && !name.endsWith(".present")).map((name) => name.split(".")[0] ?? "");

/** The condition that decides: the requirement's own, else the first powered one in which it fails, else where it could be worked out. */
function outcomeOf(model: ChassisModel, stage: Stage, life: Life, requirement: Requirement, formula: Formula): Outcome | undefined {
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

/** A plan is judged where it changes a part that the rule names, or the rule's outcome. */
function planTouches(model: ChassisModel, stage: Stage, formula: Formula, requirement: Requirement, outcome: Outcome): boolean {
  const named = rolesOf(formula).some((role) => model.parts.get(stage.parts[role] ?? "")?.change === "planned");
  return named || outcomeOf(model, stage, "restored", requirement, formula)?.evaluated.value !== outcome.evaluated.value;
}

function base(
  check: Check,
  stage: Stage,
  life: Life,
  requirement: Requirement,
): Pick<Finding, "check" | "life" | "stage" | "location" | "sources" | "why"> {
  return { check: check.id, life, stage: stage.id, location: stage.location, sources: [requirement.source], why: requirement.otherwise };
}

function broken(
  check: Check,
  model: ChassisModel,
  stage: Stage,
  life: Life,
  requirement: Requirement,
  formula: Formula,
  { condition, evaluated }: Outcome,
): Finding {
  const failing = evaluated.comparisons.filter(({ holds }) => holds === false);
  const shown = failing.length > 0 ? failing : evaluated.comparisons;
  const only = [...new Set(rolesOf(formula))];
  const part = only.length === 1 ? model.parts.get(stage.parts[only[0] ?? ""] ?? "") : undefined;
  return {
    ...base(check, stage, life, requirement),
    severity: requirement.severity,
    ...(part === undefined ? {} : { part: part.id, location: part.location }),
    condition: condition.id,
    title: `${stage.title}: not so: ${lowerFirst(requirement.title)}`,
    found: joined(shown.map((comparison) => `${comparison.leftText} is ${withUnit(comparison.left ?? Number.NaN, comparison.unit)}`)),
    shouldBe: joined(
      shown.map(
        (comparison) => `${wordOf(comparison)} ${withUnit(comparison.right ?? Number.NaN, comparison.unit)} (${comparison.rightText})`,
      ),
    ),
    figures: shown.map((comparison) => figureOf(comparison, condition, requirement)),
    action:
      requirement.action ??
      `Check ${joined(only.map((role) => named(model, stage, role)))} against the stage's papers, then the values around it.`,
    cautions: stage.template.cautions.length > 0 ? stage.template.cautions : check.cautions,
    ...(requirement.severity === "danger"
      ? { holds: "current-limited" as const }
      : requirement.severity === "replace"
        ? { holds: "full-line" as const }
        : {}),
  };
}

const named = (model: ChassisModel, stage: Stage, role: string): string => model.parts.get(stage.parts[role] ?? "")?.name ?? role;
const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function wordOf({ operator }: Compared): string {
  return { "<": "below", "<=": "at most", ">": "above", ">=": "at least", "==": "equal to", "!=": "other than" }[operator];
}

function figureOf({ operator, unit, left, right, leftText, rightText }: Compared, condition: Condition, requirement: Requirement): Figure {
  const how = `${leftText} ${operator} ${rightText}, ${condition.title}, highest line`;
  if (left === undefined || right === undefined) return figure(leftText, left ?? null, unit, how, requirement.source);
  const basics = { label: leftText, unit, how, source: requirement.source };
  return operator === "<" || operator === "<="
    ? atMost(left, right, basics)
    : operator === ">" || operator === ">="
      ? atLeast(left, right, basics)
      : { ...basics, value: left, limit: right };
}

function unknown(check: Check, stage: Stage, life: Life, requirement: Requirement, { evaluated }: Outcome): Finding {
  const missing = evaluated.missing.length > 0 ? joined(evaluated.missing) : "a number that comes out finite";
  return {
    ...base(check, stage, life, requirement),
    severity: "unmeasured",
    title: `${stage.title}: not judged: ${lowerFirst(requirement.title)}`,
    found: `not known: ${missing}`,
    shouldBe: requirement.formula,
    figures: [],
    action: `Write down ${missing} (marking, papers or a measurement).`,
    cautions: [],
  };
}

function unread(check: Check, stage: Stage, life: Life, requirement: Requirement, error: FormulaError): Finding {
  return {
    ...base(check, stage, life, requirement),
    severity: "unmeasured",
    title: `${stage.title}: a rule of the template cannot be read: ${requirement.id}`,
    found: `${error.received}: ${error.message}`,
    shouldBe: "a comparison in the formula language",
    figures: [],
    action: "Correct the template; until then judge this rule by hand.",
    cautions: [],
  };
}

function sourcesOf(stage: Stage, titles: readonly string[]): string[] {
  return [...new Set(stage.template.requirements.filter(({ title }) => titles.includes(title)).map(({ source }) => source))];
}
