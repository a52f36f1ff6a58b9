import type { Dataset } from "@underchassis/dataset";
import type { LoadedJob } from "../job/loadedJob.ts";
import type { ChassisModel, Diagnostic, Part } from "../model/index.ts";
import { collectParts } from "./collectParts.ts";
import { resolveConditions, withoutDarkRectifier } from "./conditions.ts";
import { ResolveContext } from "./context.ts";
import { resolveLine } from "./line.ts";
import { resolveMeters } from "./meters.ts";
import { resolveReadings } from "./readings.ts";
import { resolvePart } from "./resolvePart.ts";

/** Everything of a chassis model that is plain data: no simulation yet. */
export type ChassisData = Omit<ChassisModel, "compile" | "solve" | "predict" | "sensitivities" | "elementsOf"> & {
  /** Points joined because a series part of a template is not there. */
  joins: readonly (readonly [string, string])[];
};

/** Reads every value of a checked job. All problems are reported together, each with its place. */
export function resolveJob(job: LoadedJob, dataset: Dataset): { ok: true; data: ChassisData } | { ok: false; diagnostics: Diagnostic[] } {
  const context = new ResolveContext(job, dataset);
  const { chassis } = job.job;
  const isolation = chassis.isolation ?? "transformer";
  const reference = job.job.reference ?? "chassis";
  const line = resolveLine(context);
  const meters = resolveMeters(context);
  const conditions = resolveConditions(context);
  const { stages, inputs, joins } = collectParts(context, reference);
  const parts = new Map<string, Part>();
  for (const input of inputs) {
    const part = resolvePart(context, input, meters);
    if (part !== undefined) parts.set(part.id, part);
  }
  const readings = resolveReadings(context, meters, reference);
  if (line === undefined || context.diagnostics.length > 0) return { ok: false, diagnostics: context.diagnostics };
  return {
    ok: true,
    data: {
      title: job.job.title,
      description: chassis.description ?? "",
      ...(chassis.era === undefined ? {} : { era: chassis.era }),
      assembly: chassis.assembly ?? "unknown",
      isolation,
      reference,
      line,
      dataset,
      stages,
      parts,
      joins,
      points: pointsOf(parts),
      conditions: withoutDarkRectifier(context, conditions, parts.values()),
      readings,
      file: job.files.job.name,
      ...(job.job.datasetVersion === undefined ? {} : { writtenFor: job.job.datasetVersion }),
      hasPlans: [...parts.values()].some((part) => part.change === "planned"),
    },
  };
}

/** Every point with the parts that touch it, in any life. */
function pointsOf(parts: ReadonlyMap<string, Part>): Map<string, string[]> {
  const points = new Map<string, string[]>();
  for (const part of parts.values()) {
    const touched = new Set<string>();
    for (const state of Object.values(part.lives)) {
      for (const point of Object.values(state.pins)) touched.add(point);
      for (const winding of state.windings ?? []) for (const point of winding.points) touched.add(point);
    }
    for (const point of touched) points.set(point, [...(points.get(point) ?? []), part.id]);
  }
  return points;
}
