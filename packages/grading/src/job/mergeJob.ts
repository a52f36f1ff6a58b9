import {
  FORBIDDEN_NAMES,
  isRecord,
  nearestOf,
  oneOf,
  type Place,
  type Placed,
  type Problems,
  positionAt,
  put,
  type Span,
  textsIn,
} from "@underchassis/source-text";
import type { PartRow } from "./partsTable.ts";

/** A kind that parts.csv gives for a template's role, to be held against the template. */
export interface KindClaim {
  stage: number;
  role: string;
  kind: string;
  span: Span;
}

/**
 * Merges the tables' parts and readings into the job, in place. Rows that name stage and role go to that stage's parts, others
 * behind the job's own parts.
 *
 * @returns kinds given for roles, and the texts of rows that found no place
 */
export function mergeTables(
  job: Placed,
  parts: readonly PartRow[],
  readings: readonly Placed[],
  problems: Problems,
): { kinds: KindClaim[]; lost: string[] } {
  const kinds: KindClaim[] = [];
  const lost: string[] = [];
  if (!isRecord(job.value)) return { kinds, lost };
  const stages = stageIndices(job.value.stages);
  for (const row of parts) {
    if (row.stage && row.role) {
      const index = stages.get(row.stage.text);
      if (index === undefined) {
        reportStray(row.stage, [...stages.keys()], problems);
        lost.push(...textsIn(row.part.value));
      } else {
        addToStage(job, index, row, row.role, problems);
        if (row.kind) kinds.push({ stage: index, role: row.role.text, kind: row.kind.text, span: row.kind.span });
      }
      continue;
    }
    for (const name of ["stage", "role", "kind"] as const) {
      const cell = row[name];
      if (cell) put(row.part, [name], cell.text, cell.span);
    }
    append(job, "parts", row.part);
  }
  for (const reading of readings) append(job, "readings", reading);
  return { kinds, lost };
}

function stageIndices(stages: unknown): Map<string, number> {
  const indices = new Map<string, number>();
  if (!Array.isArray(stages)) return indices;
  for (const [index, stage] of stages.entries()) {
    if (isRecord(stage) && typeof stage.id === "string" && !indices.has(stage.id)) indices.set(stage.id, index);
  }
  return indices;
}

function reportStray(stage: { text: string; span: Span }, ids: readonly string[], problems: Problems): void {
  problems.add(stage.span, {
    code: "stage-unknown",
    message: `no stage is called "${stage.text}"`,
    received: stage.text,
    expected: ids.length === 0 ? "the id of a stage; the job has none" : oneOf(ids),
    nearest: () => nearestOf(stage.text, ids),
  });
}

function addToStage(job: Placed, index: number, row: PartRow, role: { text: string; span: Span }, problems: Problems): void {
  const stages = (job.value as Record<string, unknown>).stages as Record<string, unknown>[];
  const stage = stages[index]!;
  const stagePlace = job.place.members.get("stages")!.members.get(index)!;
  stage.parts ??= {};
  const parts = stage.parts;
  if (!isRecord(parts)) return;
  const partsPlace = memberPlace(stagePlace, "parts", row.part.place.value);
  const earlier = partsPlace.members.get(role.text);
  if (earlier !== undefined) {
    const where = earlier.key ?? earlier.value;
    problems.add(role.span, {
      code: "part-duplicate",
      message: `the role "${role.text}" of stage "${String(stage.id)}" is filled twice`,
      received: role.text,
      help: `it stands in ${where.source.name}, line ${positionAt(where.source, where.offset).line}, already; keep one`,
    });
    return;
  }
  if (FORBIDDEN_NAMES.has(role.text)) {
    problems.add(role.span, { code: "name-forbidden", message: "a name that cannot be used", received: role.text });
    return;
  }
  parts[role.text] = row.part.value;
  partsPlace.members.set(role.text, { ...row.part.place, key: role.span });
}

function append(job: Placed, property: string, item: Placed): void {
  const root = job.value as Record<string, unknown>;
  root[property] ??= [];
  const list = root[property];
  if (!Array.isArray(list)) return;
  memberPlace(job.place, property, item.place.value).members.set(list.length, item.place);
  list.push(item.value);
}

function memberPlace(place: Place, name: string, span: Span): Place {
  let member = place.members.get(name);
  if (member === undefined) {
    member = { value: span, members: new Map() };
    place.members.set(name, member);
  }
  return member;
}
