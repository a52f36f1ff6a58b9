import type { Dataset, StagePart, StageTemplate } from "@underchassis/dataset";
import { isRecord, listOf, recordOf, textOf } from "@underchassis/source-text";
import type { Path } from "../loadedJob.ts";
import { type Lead, leadsOf } from "./leadsOf.ts";

/** A stage as far as it can be understood. */
export interface StageSurvey {
  path: Path;
  id: string | undefined;
  templateId: string | undefined;
  /** Undefined when the dataset has no such template. */
  template: StageTemplate | undefined;
  bind: ReadonlyMap<string, string>;
  /** Terminal or inner point of the template -> point of the chassis. */
  points: ReadonlyMap<string, string>;
  /** Settings that the job gives a value. */
  settings: readonly string[];
  /** Roles that the job writes something for. */
  written: ReadonlyMap<string, Readonly<Record<string, unknown>>>;
}

/** A part as far as it can be understood. */
export interface PartSurvey {
  /** Its name, or `stage.role`. */
  id: string;
  name: string | undefined;
  kind: string | undefined;
  stage: string | undefined;
  role: string | undefined;
  template: StagePart | undefined;
  /** Undefined for a part that only the template calls for. */
  path: Path | undefined;
  written: Readonly<Record<string, unknown>>;
  leads: readonly Lead[];
}

/** The job's stages, parts and points, read with tolerance: what has the wrong shape is left out, the schema reports it. */
export interface Survey {
  reference: string;
  linePoints: readonly string[];
  stages: readonly StageSurvey[];
  parts: readonly PartSurvey[];
}

/** Surveys a merged job. */
export function survey(job: unknown, dataset: Pick<Dataset, "stages">): Survey {
  const root = recordOf(job);
  const line = recordOf(recordOf(root.chassis).line);
  const reference = textOf(root.reference) ?? "chassis";
  const stages = listOf(root.stages).flatMap((stage, index) =>
    isRecord(stage) ? [surveyStage(stage, ["stages", index], reference, dataset)] : [],
  );
  const own = listOf(root.parts).flatMap((part, index) => (isRecord(part) ? [surveyOwnPart(part, index)] : []));
  return {
    reference,
    linePoints: [textOf(line.hot) ?? "line hot", textOf(line.neutral) ?? "line neutral", textOf(line.earth) ?? "earth"],
    stages,
    parts: [...stages.flatMap(surveyStageParts), ...own],
  };
}

function surveyStage(
  stage: Readonly<Record<string, unknown>>,
  path: Path,
  reference: string,
  dataset: Pick<Dataset, "stages">,
): StageSurvey {
  const id = textOf(stage.id);
  const templateId = textOf(stage.template);
  const template = templateId === undefined ? undefined : dataset.stages.get(templateId);
  const bind = new Map(
    Object.entries(recordOf(stage.bind)).flatMap(([terminal, point]) =>
      textOf(point) === undefined ? [] : [[terminal, String(point)] as const],
    ),
  );
  const written = new Map(Object.entries(recordOf(stage.parts)).flatMap(([role, part]) => (isRecord(part) ? [[role, part] as const] : [])));
  const points = new Map<string, string>();
  for (const terminal of template?.terminals ?? []) {
    const fallback = terminal.default === "chassis" ? reference : terminal.default;
    points.set(terminal.id, bind.get(terminal.id) ?? fallback ?? `${id ?? ""}:${terminal.id}`);
  }
  for (const point of Object.keys(template?.points ?? {})) points.set(point, bind.get(point) ?? `${id ?? ""}:${point}`);
  return { path, id, templateId, template, bind, points, settings: Object.keys(recordOf(stage.settings)), written };
}

/** Parts that the template calls for, unless the job says that they are absent, and optional ones that the job names. */
function surveyStageParts(stage: StageSurvey): PartSurvey[] {
  const roles = new Map((stage.template?.parts ?? []).map((part) => [part.role, part] as const));
  const present = [...roles.values()].filter((part) => part.optional !== true || stage.written.has(part.role)).map(({ role }) => role);
  const unknown = [...stage.written.keys()].filter((role) => !roles.has(role));
  return [...present, ...unknown].flatMap((role) => {
    const written = stage.written.get(role) ?? {};
    if (written.absent === true) return [];
    const template = roles.get(role);
    const name = textOf(written.name);
    const path = stage.written.has(role) ? [...stage.path, "parts", role] : undefined;
    return [
      {
        id: name ?? `${stage.id ?? ""}.${role}`,
        name,
        kind: template?.kind,
        stage: stage.id,
        role,
        template,
        path,
        written,
        leads: leadsOf(written, path ?? stage.path, template, stage),
      },
    ];
  });
}

function surveyOwnPart(part: Readonly<Record<string, unknown>>, index: number): PartSurvey {
  const path = ["parts", index];
  const name = textOf(part.name);
  return {
    id: name ?? "",
    name,
    kind: textOf(part.kind),
    stage: textOf(part.stage),
    role: textOf(part.role),
    template: undefined,
    path,
    written: part,
    leads: leadsOf(part, path, undefined, undefined),
  };
}
