import { type Compared, type Formula, FormulaError } from "@underchassis/calc/expression";
import type { ChassisModel, Check, Condition, Figure, Finding, Life, Stage } from "../../model/index.ts";
import { atLeast, atMost, figure } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { joined, withUnit } from "../shared/phrases.ts";
import { type Outcome, outcomeOf, type Requirement, readRequirement, rolesOf } from "../shared/requirements.ts";

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
  const held: Requirement[] = [];
  const findings: Finding[] = [];
  for (const requirement of stage.template.requirements) {
    const formula = readRequirement(requirement);
    if (formula instanceof FormulaError) {
      findings.push(unread(check, stage, life, requirement, formula));
      continue;
    }
    const outcome = outcomeOf(model, stage, life, requirement, formula);
    if (outcome === undefined || (life === "planned" && !planTouches(model, stage, formula, requirement, outcome))) continue;
    if (outcome.evaluated.value === true) held.push(requirement);
    else if (outcome.evaluated.value === false) findings.push(broken(check, model, stage, life, requirement, formula, outcome));
    else findings.push(unknown(check, model, stage, life, requirement, outcome));
  }
  if (held.length > 0) findings.push(kept(check, stage, life, held));
  return findings;
}

/** A plan is judged where it changes a part that the rule names, or the rule's outcome. */
function planTouches(model: ChassisModel, stage: Stage, formula: Formula, requirement: Requirement, outcome: Outcome): boolean {
  const touched = rolesOf(formula).some((role) => model.parts.get(stage.parts[role] ?? "")?.change === "planned");
  return touched || outcomeOf(model, stage, "restored", requirement, formula)?.evaluated.value !== outcome.evaluated.value;
}

function kept(check: Check, stage: Stage, life: Life, held: readonly Requirement[]): Finding {
  return {
    check: check.id,
    severity: "good",
    life,
    stage: stage.id,
    title: `${stage.title}: ${held.length} of its template's rules ${held.length === 1 ? "is" : "are"} kept`,
    found: held.map(({ title }) => title).join("; "),
    shouldBe: "as found",
    figures: [],
    why: "These are the rules particular to this kind of stage.",
    action: "Nothing to do.",
    cautions: [],
    sources: [...new Set(held.map(({ source }) => source))],
    location: stage.location,
  };
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
  const only = rolesOf(formula);
  const about = requirement.about ?? (only.length === 1 ? only[0] : undefined);
  const part = about === undefined ? undefined : model.parts.get(stage.parts[about] ?? "");
  const plain = (text: string) => /^[\d.]+$/.test(text);
  return {
    ...base(check, stage, life, requirement),
    severity: requirement.severity,
    ...(part === undefined ? {} : { part: part.id, location: part.location }),
    condition: condition.id,
    title: `${stage.title}: rule not kept: ${lowerFirst(requirement.title)}`,
    found: joined(
      shown.map(({ leftText, left, unit }) => {
        const labelled = requirement.measures !== undefined && leftText === evaluated.comparisons[0]?.leftText;
        return `${labelled ? requirement.measures : inWords(model, stage, leftText)}: ${withUnit(left ?? Number.NaN, unit)}`;
      }),
    ),
    shouldBe: joined(
      shown.map(
        (side) =>
          `${wordOf(side)} ${withUnit(side.right ?? Number.NaN, side.unit)}${plain(side.rightText) ? "" : ` (${inWords(model, stage, side.rightText)})`}`,
      ),
    ),
    figures: shown.map((comparison) => figureOf(comparison, condition, requirement)),
    action:
      requirement.action ??
      `Check ${only.length === 0 ? "the parts" : joined(only.map((role) => named(model, stage, role)))} of this stage against its papers, then the values around.`,
    cautions: stage.template.cautions.length > 0 ? stage.template.cautions : check.cautions,
    ...(requirement.severity === "danger"
      ? { holds: "current-limited" as const }
      : requirement.severity === "replace"
        ? { holds: "full-line" as const }
        : {}),
  };
}

const named = (model: ChassisModel, stage: Stage, role: string): string => model.parts.get(stage.parts[role] ?? "")?.name ?? role;
/** A formula's text with settings, parts and points called by name: "lowest frequency of the band", "V1 plate amps", "voltage at B+". */
function inWords(model: ChassisModel, stage: Stage, text: string): string {
  return text
    .replace(/(?<![\w."])[a-z]\w*(?![\w.("])/g, (name) => stage.template.settings?.[name]?.meaning ?? name)
    .replace(
      /(volts|ripple)\("([^"]*)"\)/g,
      (_whole, quantity: string, point: string) => `${quantity === "volts" ? "voltage" : "ripple"} at ${stage.points[point] ?? point}`,
    )
    .replace(
      /\b([a-z]\w*)\.([a-z]\w*)\b/g,
      (_whole, role: string, property: string) => `${named(model, stage, role)} ${property.replace(/([A-Z])/g, " $1").toLowerCase()}`,
    );
}

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

function unknown(check: Check, model: ChassisModel, stage: Stage, life: Life, requirement: Requirement, { evaluated }: Outcome): Finding {
  const missing =
    evaluated.missing.length > 0 ? joined(evaluated.missing.map((name) => inWords(model, stage, name))) : "a number that comes out finite";
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
