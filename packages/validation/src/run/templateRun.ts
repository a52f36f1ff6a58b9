import type { Dataset, StageTemplate } from "@underchassis/dataset";
import { buildModel, templateJob } from "@underchassis/grading";
import type { TemplateRun } from "../model/subjects.ts";

/** A template as grading sees it, alone with its typical surroundings: once as it usually is, once with every optional part. */
export function templateRun(file: string, value: unknown, dataset: Dataset): TemplateRun {
  const template = value as StageTemplate;
  const alone: Dataset = { ...dataset, stages: new Map([[template.id, template]]) };
  return {
    file,
    template,
    variants: (template.parts.some(({ optional }) => optional === true) ? [false, true] : [false]).map((optional) => ({
      optional,
      built: buildModel({ job: { name: file, text: JSON.stringify(templateJob(template, optional), null, 1) } }, alone),
    })),
  };
}
