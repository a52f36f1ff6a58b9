import { isRecord, listOf, nearestOf, oneOf, recordOf, textOf } from "@underchassis/source-text";
import type { Path } from "../loadedJob.ts";
import { isDoubtful, type ReferenceContext, report } from "./context.ts";
import { partNames } from "./partIndex.ts";
import { touchedPoints } from "./pointIndex.ts";
import type { Survey } from "./survey.ts";

const VOLTS_AND_OHMS: readonly string[] = ["dc-volts", "ac-volts", "ripple-volts", "ohms"];

/** Conditions that every job has and that have the power on. */
const POWERED: readonly string[] = ["tubes-out", "standby", "operating"];

/** Whether readings name points (for currents: parts) that exist, and two different ones. */
export function checkReadings(context: ReferenceContext): void {
  const points = touchedPoints(context.survey);
  const names = partNames(context.survey);
  const hidden = hiddenPoints(context.survey);
  for (const [index, value] of listOf(recordOf(context.job.value).readings).entries()) {
    if (!isRecord(value)) continue;
    const path = ["readings", index];
    const at = textOf(value.at);
    const to = textOf(value.to);
    const amps = value.quantity === "dc-amps" || value.quantity === "ac-amps";
    if (amps) {
      if (at !== undefined && !names.has(at) && !isDoubtful(context, at)) reportPart(at, [...path, "at"]);
      continue;
    }
    // A quantity that is not known may be a current.
    if (!VOLTS_AND_OHMS.includes(String(value.quantity)) && at !== undefined && names.has(at)) continue;
    for (const [name, point] of [
      ["at", at],
      ["to", to],
    ] as const)
      if (point !== undefined) checkPoint(point, [...path, name]);
    if (value.quantity === "ohms" && isPowered(context, value.condition)) {
      report(context, [...path, "condition"], {
        code: "reading-ohms-powered",
        severity: "warning",
        message: "a resistance read with the power on means nothing, and an ohmmeter does not stand it",
        received: String(value.condition),
        expected: "cold, or a condition of your own that is not powered",
        help: "resistance is read with the plug out and the capacitors discharged and measured",
      });
    }
    if (at !== undefined && at === (to ?? context.survey.reference)) {
      report(context, [...path, to === undefined ? "at" : "to"], {
        code: "reading-one-point",
        severity: "warning",
        message: `a reading between "${at}" and itself`,
        received: at,
        expected: "two different points",
        help: `readings count from "${context.survey.reference}" unless "to" says otherwise`,
      });
    }
  }

  function reportPart(at: string, path: Path): void {
    const known = [...names.keys()];
    report(context, path, {
      code: "part-unknown",
      message: points.has(at) ? `"${at}" is a point; a current is read through a part` : `no part is called "${at}"`,
      received: at,
      expected: `the name of a part, or stage.role: ${oneOf(known)}`,
      nearest: () => nearestOf(at, known),
      ...(points.has(at) ? { help: `parts at this point: ${oneOf(partsAt(context.survey, at))}` } : {}),
    });
  }

  function checkPoint(point: string, path: Path): void {
    const leads = points.get(point);
    if (
      (leads !== undefined && (leads > 0 || point === context.survey.reference || !isListed(context, point))) ||
      isDoubtful(context, point)
    )
      return;
    if (hidden.unknownStages.some((prefix) => point.startsWith(prefix))) return;
    const bound = hidden.bound.get(point);
    if (bound !== undefined) {
      report(context, path, {
        code: "point-unknown",
        message: `"${point}" is bound to a point with a name of its own`,
        received: point,
        expected: bound,
        nearest: bound,
      });
      return;
    }
    const part = context.survey.parts.find(({ id }) => id === point);
    report(context, path, {
      code: "point-unknown",
      message: isListed(context, point)
        ? `no part touches the point "${point}"`
        : part
          ? `"${point}" is a part, not a point`
          : `no point is called "${point}"`,
      received: point,
      expected: "a point that a part or a bind names",
      nearest: () => nearestOf(point, points.keys()),
      ...(part && part.leads.length > 0 ? { help: `its points: ${oneOf([...new Set(part.leads.map((lead) => lead.point))])}` } : {}),
    });
  }
}

/** Whether a condition has the power on, as far as the job says so. */
function isPowered({ job }: ReferenceContext, condition: unknown): boolean {
  const id = textOf(condition);
  if (id === undefined) return false;
  const own = recordOf(recordOf(recordOf(job.value).conditions)[id]);
  if (typeof own.powered === "boolean") return own.powered;
  const standing = POWERED.includes(id) ? id : (textOf(own.like) ?? "");
  return POWERED.includes(standing);
}

function isListed({ job }: ReferenceContext, point: string): boolean {
  return Object.hasOwn(recordOf(recordOf(job.value).points), point);
}

/** Inner points that were bound and so have another name, and the beginnings of names in stages that are not understood. */
function hiddenPoints({ stages }: Survey): { bound: Map<string, string>; unknownStages: string[] } {
  const bound = new Map<string, string>();
  const unknownStages: string[] = [];
  for (const { id, template, points } of stages) {
    if (id === undefined) continue;
    if (template === undefined) unknownStages.push(`${id}:`);
    for (const [name, point] of points) if (point !== `${id}:${name}`) bound.set(`${id}:${name}`, point);
  }
  return { bound, unknownStages };
}

function partsAt({ parts }: Survey, point: string): string[] {
  return [...new Set(parts.filter(({ leads }) => leads.some((lead) => lead.point === point)).map(({ id }) => id))];
}
