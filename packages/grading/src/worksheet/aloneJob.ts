import type { Job, StageTemplate } from "@underchassis/dataset";
import { templateJob } from "../circuit/templateJob.ts";

/** A template with its typical surroundings as a job in which the stage goes by the template's own id, its inner points too. */
export function aloneJob(template: StageTemplate, optional = false): Job {
  const text = JSON.stringify(templateJob(template, optional)).replaceAll('"stage:', `"${template.id}:`);
  const job = JSON.parse(text) as Job;
  return { ...job, stages: (job.stages ?? []).map((stage) => ({ ...stage, id: template.id })) };
}
