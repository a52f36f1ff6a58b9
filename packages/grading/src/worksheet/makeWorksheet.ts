import type { Dataset, StageTemplate } from "@underchassis/dataset";
import { buildModel } from "../grade/gradeJob.ts";
import type { JobFiles } from "../job/loadedJob.ts";
import type { ChassisModel, Condition, Diagnostic } from "../model/index.ts";
import { aloneJob } from "./aloneJob.ts";
import { cautionsOf, looseParts, stageParts } from "./workParts.ts";
import { stagePoints, workConditions } from "./workPoints.ts";
import type { WorkStage, Worksheet } from "./worksheet.ts";

export type WorksheetResult = { ok: true; worksheet: Worksheet } | { ok: false; diagnostics: Diagnostic[] };

type Built = { ok: true; model: ChassisModel } | { ok: false; diagnostics: Diagnostic[] };

/** A template with its typical surroundings, as a chassis of its own. */
function alone(template: StageTemplate, dataset: Dataset, optional: boolean): Built {
  return buildModel({ job: { name: template.id, text: JSON.stringify(aloneJob(template, optional)) } }, dataset);
}

/** The same template with every optional part, where that can be built: it shows what else a chassis may have. */
function having(template: StageTemplate, dataset: Dataset): { model: ChassisModel; stage: ChassisModel["stages"][number] } | undefined {
  const built = alone(template, dataset, true);
  const stage = built.ok ? built.model.stages[0] : undefined;
  return built.ok && stage !== undefined ? { model: built.model, stage } : undefined;
}

const always = (dataset: Dataset): string[] =>
  [...dataset.cautions.values()].flatMap((caution) => (caution.always === true ? [caution.id] : []));

function stagesOf(
  model: ChassisModel,
  conditions: readonly Condition[],
  dataset: Dataset,
  typical: boolean,
  idOf: (stage: ChassisModel["stages"][number]) => string,
): WorkStage[] {
  const taken = new Set<string>();
  return model.stages.map((stage) => ({
    id: idOf(stage),
    title: stage.title,
    template: stage.template.id,
    summary: stage.template.summary,
    cautions: cautionsOf(dataset, stage.template.cautions),
    parts: stageParts(model, stage, having(stage.template, dataset)),
    points: stagePoints(model, stage, conditions, typical, taken),
  }));
}

const toldConditions = (conditions: readonly Condition[]) => conditions.map(({ id, title, powered }) => ({ id, title, powered }));

/**
 * A bench sheet for some stage templates, each on its own with its typical values.
 *
 * @param templates at least one
 * @returns what keeps a template from being simulated, when anything does
 */
export function templatesWorksheet(templates: readonly StageTemplate[], dataset: Dataset): WorksheetResult {
  const conditions = new Map<string, Condition>();
  const stages: WorkStage[] = [];
  for (const template of templates) {
    const built = alone(template, dataset, false);
    if (!built.ok) return built;
    const own = workConditions(built.model);
    for (const condition of own) conditions.set(condition.id, condition);
    stages.push(...stagesOf(built.model, own, dataset, true, () => template.id));
  }
  const order = ["cold", "tubes-out", "standby", "operating"];
  const sorted = [...conditions.values()].sort((a, b) => order.indexOf(a.id) - order.indexOf(b.id));
  return {
    ok: true,
    worksheet: {
      title: templates.map(({ title }) => title).join(", "),
      datasetVersion: dataset.version,
      cautions: cautionsOf(dataset, always(dataset)),
      conditions: toldConditions(sorted),
      stages,
    },
  };
}

/** A bench sheet for the stages of a job, with its own points, names and values. */
export function jobWorksheet(files: JobFiles, dataset: Dataset): WorksheetResult {
  const built = buildModel(files, dataset);
  if (!built.ok) return built;
  const { model } = built;
  const conditions = workConditions(model);
  const stages = stagesOf(model, conditions, dataset, false, ({ id }) => id);
  const loose = looseParts(model);
  const rest: WorkStage[] = loose.length === 0 ? [] : [{ id: "", title: "Parts of no stage", cautions: [], parts: loose, points: [] }];
  return {
    ok: true,
    worksheet: {
      title: model.title,
      datasetVersion: dataset.version,
      cautions: cautionsOf(dataset, always(dataset)),
      conditions: toldConditions(conditions),
      stages: [...stages, ...rest],
    },
  };
}
