import type { Dataset, StageTemplate } from "@underchassis/dataset";
import type { ChassisModel, Part, Stage } from "../model/index.ts";
import { measureHow, usualMeasures } from "./measureHow.ts";
import type { WorkMeasure, WorkPart } from "./worksheet.ts";

type TemplatePart = StageTemplate["parts"][number];

/** Which measurement shows the value that a drift limit is about, and its base unit. */
const VALUE_OF: Readonly<Record<string, { quantity: string; unit: string }>> = {
  resistor: { quantity: "resistance", unit: "ohm" },
  potentiometer: { quantity: "resistance", unit: "ohm" },
  capacitor: { quantity: "capacitance", unit: "F" },
};

function measuresOf(part: Part): WorkMeasure[] {
  const asked = part.advice === undefined ? usualMeasures(part.kind) : part.advice.measure;
  const share = part.advice?.replace?.driftLimit;
  const { value } = part.lives.designed.main ?? {};
  const own = VALUE_OF[part.kind];
  return asked.map((quantity) => ({
    quantity,
    how: measureHow(quantity),
    ...(own?.quantity === quantity && share !== undefined && value !== undefined
      ? { low: value * Math.max(0, 1 - share), high: value * (1 + share), unit: own.unit }
      : {}),
  }));
}

/** Where a part lies, in the chassis's own points. */
function placeOf(part: Part): string {
  const { windings, pins } = part.lives.designed;
  if (windings !== undefined) return windings.map(({ id, points }) => `${id}: ${points.join(" - ")}`).join("; ");
  if (pins.a !== undefined && pins.b !== undefined) return `${pins.a} - ${pins.b}`;
  return Object.entries(pins)
    .map(([pin, point]) => `${pin} ${point}`)
    .join(", ");
}

const typicalOf = (template: TemplatePart | undefined): string | undefined =>
  template === undefined
    ? undefined
    : [template.type, template.typical, ...Object.entries(template.windings ?? {}).map(([id, { typical }]) => `${id} ${typical}`)]
        .filter(Boolean)
        .join("; ") || undefined;

function substituteText({ substitute }: TemplatePart): string | undefined {
  if (substitute === undefined) return undefined;
  const { lowest, highest, text } = substitute;
  const percent = (share: number) => `${Number((share * 100).toPrecision(3))} %`;
  const range = lowest !== undefined && highest !== undefined ? `${percent(lowest)} to ${percent(highest)} of the marked value` : "";
  return [range, text].filter(Boolean).join("; ") || undefined;
}

/** Whether nobody has named its value, so that the template's stands in. */
function isTypical({ template, lives: { designed } }: Part): boolean {
  return template !== undefined && (designed.main?.from ?? designed.ratingsFrom) === "typical";
}

function lineOf(part: Part, template: TemplatePart | undefined, optional: boolean): WorkPart {
  const sources = [template?.source, template?.replace?.source, template?.substitute?.source].filter((id) => id !== undefined);
  const [typical, substitute, rule] = [typicalOf(template), template && substituteText(template), template?.replace?.rule];
  return {
    ...(part.role === undefined ? {} : { role: part.role }),
    name: part.name.includes(".") && part.role !== undefined ? "" : part.name,
    title: part.title,
    kind: part.kind,
    between: placeOf(part),
    optional,
    ...(part.asWritten.marked === undefined || optional || isTypical(part) ? {} : { marked: part.asWritten.marked }),
    ...(typical === undefined ? {} : { typical }),
    measures: measuresOf(part),
    ...(template?.ages === undefined ? {} : { ages: template.ages }),
    ...(rule === undefined ? {} : { replace: rule }),
    ...(substitute === undefined ? {} : { substitute }),
    sources: [...new Set(sources)],
  };
}

/**
 * The parts of a stage, in the template's order.
 *
 * @param having the same stage with every optional part, to list those that this chassis does not name
 */
export function stageParts(model: ChassisModel, stage: Stage, having?: { model: ChassisModel; stage: Stage }): WorkPart[] {
  return stage.template.parts.flatMap((template) => {
    const own = model.parts.get(stage.parts[template.role] ?? "");
    if (own !== undefined) return [lineOf(own, template, false)];
    const possible = having?.model.parts.get(having.stage.parts[template.role] ?? "");
    return possible === undefined ? [] : [lineOf(possible, template, true)];
  });
}

/** Parts that no stage calls for; loads and batteries that stand for the rest of the world are left out. */
export function looseParts(model: ChassisModel): WorkPart[] {
  return [...model.parts.values()]
    .filter((part) => part.template === undefined && part.kind !== "load" && part.kind !== "battery" && part.kind !== "wire")
    .map((part) => lineOf(part, undefined, false));
}

/** Cautions by their ids, the gravest first. */
export function cautionsOf(dataset: Dataset, ids: readonly string[]): { id: string; title: string; text: string }[] {
  return [...new Set(ids)]
    .flatMap((id) => dataset.cautions.get(id) ?? [])
    .sort((a, b) => a.rank - b.rank || (a.id < b.id ? -1 : 1))
    .map(({ id, title, text }) => ({ id, title, text }));
}
