import type { SteadyState } from "@underchassis/calc";
import type { ChassisModel, Condition, Prediction, ReadingQuantity, Stage } from "../model/index.ts";
import { DEFAULT_METER } from "../resolve/defaults.ts";
import type { WorkPoint } from "./worksheet.ts";

/** Below this a point carries nothing worth a line. */
const WORTH_VOLTS = 0.05;
/** Above this an ohmmeter shows what the meter, the fingers and the dust are. */
const MOST_OHMS = 20e6;
const METER = { ohms: DEFAULT_METER.inputOhms, accuracy: DEFAULT_METER.accuracy };
/** The order of work: nothing is powered before it was measured cold. */
const ORDER: readonly Condition["like"][] = ["cold", "tubes-out", "standby", "operating"];

/** The conditions of a chassis in the order of work; a powered one that is electrically another one is left out. */
export function workConditions(model: ChassisModel): Condition[] {
  const seen = new Set<SteadyState>();
  const differs = (condition: Condition): boolean => {
    if (!condition.powered) return condition.like === "cold";
    const solved = model.solve({ life: "designed", condition: condition.id, line: "actual" });
    if (!solved.ok || seen.has(solved.steady)) return false;
    seen.add(solved.steady);
    return true;
  };
  // Asked in the opposite order, so that operating gives its name to those that are the same.
  const sorted = [...model.conditions.values()].sort((a, b) => ORDER.indexOf(a.like) - ORDER.indexOf(b.like));
  return sorted.reverse().filter(differs).reverse();
}

const isRead = ({ nominal }: Prediction, quantity: ReadingQuantity): boolean =>
  quantity === "ohms" ? nominal < MOST_OHMS && nominal >= 0 : Math.abs(nominal) >= (quantity.endsWith("volts") ? WORTH_VOLTS : 0);

function windowOf(model: ChassisModel, condition: string, quantity: ReadingQuantity, at: string, to: string): Prediction | undefined {
  const prediction = model.predict({ life: "designed", condition, line: "actual" }, { quantity, at, to }, METER);
  return prediction !== undefined && Number.isFinite(prediction.nominal) && isRead(prediction, quantity) ? prediction : undefined;
}

/** Ends of windings and the line side: their mean says nothing. */
function alternates(model: ChassisModel, condition: string, point: string): boolean {
  const solved = model.solve({ life: "designed", condition, line: "actual" });
  const name = solved.ok ? solved.compiled.pointOf(point) : undefined;
  const figures = solved.ok && name !== undefined ? solved.steady.points.get(name) : undefined;
  return figures === undefined || figures.acRmsVolts > Math.abs(figures.meanVolts);
}

/** Readings that the template names, with its own window where the chassis has the template's values, else the computed one. */
function named(model: ChassisModel, stage: Stage, condition: Condition, typical: boolean): WorkPoint[] {
  return stage.template.expected.flatMap((expected): WorkPoint[] => {
    if (expected.condition !== condition.id) return [];
    const at = expected.part === undefined ? stage.points[expected.at ?? ""] : stage.parts[expected.part];
    if (at === undefined) return [];
    const to = expected.to === undefined ? model.reference : (stage.points[expected.to] ?? expected.to);
    const base = { condition: condition.id, at, to, quantity: expected.quantity, title: expected.title };
    if (typical && expected.low !== undefined && expected.high !== undefined)
      return [{ ...base, low: expected.low, high: expected.high, source: expected.source }];
    const window = windowOf(model, condition.id, expected.quantity, at, to);
    return [
      window === undefined ? { ...base, source: expected.source } : { ...base, low: window.low, high: window.high, source: "computed" },
    ];
  });
}

/** Every terminal and inner point of a stage against the reference: ohms when cold, direct volts under power. */
function walked(model: ChassisModel, stage: Stage, condition: Condition): WorkPoint[] {
  if (stage.template.family === "line") return [];
  const quantity = condition.powered ? "dc-volts" : "ohms";
  const points = [...new Set(Object.values(stage.points))].filter((point) => point !== model.reference);
  return points.flatMap((at): WorkPoint[] => {
    if (condition.powered && alternates(model, condition.id, at)) return [];
    const window = windowOf(model, condition.id, quantity, at, model.reference);
    return window === undefined
      ? []
      : [
          {
            condition: condition.id,
            at,
            to: model.reference,
            quantity,
            low: Math.max(window.low, quantity === "ohms" ? 0 : window.low),
            high: window.high,
            source: "computed",
          },
        ];
  });
}

const keyOf = ({ condition, at, to, quantity }: WorkPoint): string => [condition, at, to, quantity].join("|");

/**
 * The readings of a stage in the order of work.
 *
 * @param typical whether the chassis has the template's own values, so that the template's windows hold
 * @param taken readings that another stage has asked for; those of this stage are added
 */
export function stagePoints(
  model: ChassisModel,
  stage: Stage,
  conditions: readonly Condition[],
  typical: boolean,
  taken: Set<string>,
): WorkPoint[] {
  return conditions.flatMap((condition) =>
    [...named(model, stage, condition, typical), ...walked(model, stage, condition)].filter((point) => {
      const key = keyOf(point);
      if (taken.has(key)) return false;
      taken.add(key);
      return true;
    }),
  );
}
