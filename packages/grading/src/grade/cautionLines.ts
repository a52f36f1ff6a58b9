import type { CautionRecord, Dataset, Report } from "@underchassis/dataset";
import type { ChassisModel, Finding } from "../model/index.ts";
import { placeReasons } from "./cautionPlaces.ts";

type CautionLine = Report["cautions"][number];

/** What a text with figures adds when memory is among its sources, or is its only one; "" otherwise. */
function memoryNote({ text, sources }: CautionRecord, dataset: Dataset): string {
  const kinds = sources.map((id) => dataset.sources.get(id)?.kind ?? id);
  if (!kinds.includes("from-memory") || !/\d/.test(text)) return "";
  return kinds.every((kind) => kind === "from-memory") ? " (Figures from memory.)" : " (Figures in part from memory.)";
}

/**
 * Cautions that always apply, those that apply to something in this chassis, those of the templates used, of the findings that call
 * for action and of the next steps; by rank.
 */
export function cautionLines(
  model: ChassisModel,
  findings: readonly Finding[],
  next: readonly { cautions: readonly string[] }[] = [],
): CautionLine[] {
  const because = new Map<string, Set<string>>();
  const call = (id: string, reason?: string) => {
    const reasons = because.get(id) ?? new Set<string>();
    because.set(id, reasons);
    if (reason !== undefined) reasons.add(reason);
  };
  const { cautions } = model.dataset;
  for (const caution of cautions.values()) {
    if (caution.always === true) call(caution.id);
    for (const place of caution.appliesTo ?? []) for (const reason of placeReasons(place, model)) call(caution.id, reason);
  }
  for (const stage of model.stages) for (const id of stage.template.cautions) call(id, stage.title);
  for (const finding of findings)
    if (finding.severity !== "good") for (const id of finding.cautions) call(id, finding.part ?? finding.point ?? finding.title);
  for (const step of next) for (const id of step.cautions) call(id, "the next steps");
  return [...because]
    .flatMap(([id, reasons]) => {
      const caution = cautions.get(id);
      return caution === undefined ? [] : [{ caution, reasons }];
    })
    .sort((a, b) => a.caution.rank - b.caution.rank || (a.caution.id < b.caution.id ? -1 : 1))
    .map(({ caution, reasons }) => ({
      id: caution.id,
      title: caution.title,
      text: caution.text + memoryNote(caution, model.dataset),
      because: [...reasons],
    }));
}
