import type { JobPart, JobPartState, StagePart, StageTemplate } from "@underchassis/dataset";
import type { Path } from "../job/loadedJob.ts";
import type { Stage } from "../model/index.ts";
import type { ResolveContext } from "./context.ts";
import { fittedOf, type PartInput, pairPins, type WindingInput } from "./partInput.ts";
import { stageSettings } from "./stageSettings.ts";

/** Stages with their terminals bound, every part that they and the job call for, and points joined where a series part is missing. */
export function collectParts(
  context: ResolveContext,
  reference: string,
): { stages: Stage[]; inputs: PartInput[]; joins: [string, string][] } {
  const stages: Stage[] = [];
  const inputs: PartInput[] = [];
  const joins: [string, string][] = [];
  for (const [index, written] of (context.job.job.stages ?? []).entries()) {
    const template = context.dataset.stages.get(written.template);
    if (template === undefined) continue; // the reader has reported it
    const points = bindPoints(template, written.id, written.bind ?? {}, reference);
    const parts: Record<string, string> = {};
    for (const part of template.parts) {
      const state = written.parts?.[part.role];
      if (state?.absent === true || (state === undefined && part.optional === true)) {
        const [a, b] = (part.between ?? []).map((point) => points[point]);
        if (part.whenAbsent === "joined" && a !== undefined && b !== undefined) joins.push([a, b]);
        continue;
      }
      const path = state === undefined ? ["stages", index] : ["stages", index, "parts", part.role];
      const input = templatePart(part, state ?? {}, written.id, template.id, points, path);
      parts[part.role] = input.id;
      inputs.push(input);
    }
    stages.push({
      id: written.id,
      title: written.title ?? template.title,
      template,
      points,
      parts,
      settings: stageSettings(context, template, written.settings ?? {}, ["stages", index, "settings"]),
      ownSettings: Object.keys(written.settings ?? {}),
      location: context.job.locate(["stages", index]),
    });
  }
  for (const [index, part] of (context.job.job.parts ?? []).entries()) inputs.push(freePart(part, ["parts", index]));
  return { stages, inputs, joins };
}

/** Terminal or inner point -> point of the chassis: bound, else the template's default, else `stage:point`. */
function bindPoints(
  template: StageTemplate,
  stage: string,
  bind: Readonly<Record<string, string>>,
  reference: string,
): Record<string, string> {
  const points: Record<string, string> = {};
  for (const terminal of template.terminals) {
    const fallback = terminal.default === "chassis" ? reference : terminal.default;
    points[terminal.id] = bind[terminal.id] ?? fallback ?? `${stage}:${terminal.id}`;
  }
  for (const point of Object.keys(template.points ?? {})) points[point] = bind[point] ?? `${stage}:${point}`;
  return points;
}

function templatePart(
  part: StagePart,
  state: JobPartState,
  stage: string,
  templateId: string,
  points: Readonly<Record<string, string>>,
  path: Path,
): PartInput {
  const pointOf = (name: string) => points[name] ?? `${stage}:${name}`;
  const name = state.name ?? `${stage}.${part.role}`;
  const pins = part.between ? pairPins(part.between.map(pointOf)) : mapValues(part.pins ?? {}, pointOf);
  const windings: WindingInput[] = [];
  for (const [id, winding] of Object.entries(part.windings ?? {})) {
    const own = state.windings?.[id];
    if (own?.absent === true || (winding.optional === true && own === undefined)) continue;
    windings.push({
      id,
      points: winding.between.map(pointOf),
      marked: own?.marked ?? winding.typical,
      fromTemplate: own?.marked === undefined,
      typicalOhms: winding.ohms,
      state: own ?? {},
      path: [...path, "windings", id],
    });
  }
  return {
    id: name,
    name,
    title: part.title,
    kind: part.kind,
    role: part.role,
    ...(part.duty === undefined ? {} : { duty: part.duty }),
    stage,
    templateId,
    template: part,
    polarised: part.polarised ?? false,
    written: state,
    path,
    pins: pairPins(state.between) ?? pins ?? {},
    foundPins: pairPins(state.foundBetween) ?? state.foundPins,
    fittedPins: pairPins(fittedOf(state)?.between) ?? fittedOf(state)?.pins,
    windings,
  };
}

function freePart(part: JobPart, path: Path): PartInput {
  const windings = Object.entries(part.windings ?? {}).map(
    ([id, winding]): WindingInput => ({
      id,
      points: winding.between,
      marked: winding.marked,
      fromTemplate: false,
      typicalOhms: undefined,
      state: {
        marked: winding.marked,
        ...(winding.measured === undefined ? {} : { measured: winding.measured }),
        ...(winding.openVolts === undefined ? {} : { openVolts: winding.openVolts }),
      },
      path: [...path, "windings", id],
    }),
  );
  return {
    id: part.name,
    name: part.name,
    title: part.role === undefined ? part.kind : part.role.replace(/([A-Z])/g, " $1").toLowerCase(),
    kind: part.kind,
    ...(part.role === undefined ? {} : { role: part.role, duty: dutyOfRole(part.role) }),
    ...(part.stage === undefined ? {} : { stage: part.stage }),
    polarised: false,
    written: part,
    path,
    pins: pairPins(part.between) ?? part.pins ?? {},
    foundPins: pairPins(part.foundBetween) ?? part.foundPins,
    fittedPins: pairPins(fittedOf(part)?.between) ?? fittedOf(part)?.pins,
    windings,
  };
}

/** A free part's role names its duty in the same words, written together: standbyBypass -> standby-bypass. */
function dutyOfRole(role: string): string {
  return role.replace(/([A-Z])/g, "-$1").toLowerCase();
}

function mapValues<T, U>(record: Readonly<Record<string, T>>, map: (value: T) => U): Record<string, U> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, map(value)]));
}
