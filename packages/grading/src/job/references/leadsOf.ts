import type { StagePart } from "@underchassis/dataset";
import { isRecord, listOf, recordOf, textOf } from "@underchassis/source-text";
import type { Path } from "../loadedJob.ts";
import type { StageSurvey } from "./survey.ts";

/** One lead of a part on one point of the chassis. */
export interface Lead {
  point: string;
  /** Leads of one group belong together: the two of a pair, those of one winding, all pins. */
  group: string;
  life: "designed" | "found" | "fitted";
  /** Where the point is written; undefined when it follows from the template. */
  path: Path | undefined;
  /** Terminal or inner point of the template that the lead lies on. */
  via?: string;
}

/** The leads that a part has through its lives: what the job writes, else what its template says. */
export function leadsOf(
  written: Readonly<Record<string, unknown>>,
  path: Path,
  template: StagePart | undefined,
  stage: StageSurvey | undefined,
): Lead[] {
  const fitted = recordOf(written.fitted);
  const designed = [
    ...pair(written.between, [...path, "between"], "designed"),
    ...pins(written.pins, [...path, "pins"], "designed"),
    ...windings(written.windings, [...path, "windings"]),
  ];
  return [
    ...(designed.length > 0 || template === undefined || stage === undefined ? designed : templateLeads(template, stage, written)),
    ...pair(written.foundBetween, [...path, "foundBetween"], "found"),
    ...pins(written.foundPins, [...path, "foundPins"], "found"),
    ...pair(fitted.between, [...path, "fitted", "between"], "fitted"),
    ...pins(fitted.pins, [...path, "fitted", "pins"], "fitted"),
  ];
}

function pair(value: unknown, path: Path, life: Lead["life"]): Lead[] {
  return listOf(value).flatMap((point, index) => {
    const name = textOf(point);
    return name === undefined ? [] : [{ point: name, group: "pair", life, path: [...path, index] }];
  });
}

function pins(value: unknown, path: Path, life: Lead["life"]): Lead[] {
  return Object.entries(recordOf(value)).flatMap(([pin, point]) => {
    const name = textOf(point);
    return name === undefined ? [] : [{ point: name, group: "pins", life, path: [...path, pin] }];
  });
}

function windings(value: unknown, path: Path): Lead[] {
  return Object.entries(recordOf(value)).flatMap(([id, winding]) =>
    isRecord(winding)
      ? pair(winding.between, [...path, id, "between"], "designed").map((lead) => ({ ...lead, group: `winding ${id}` }))
      : [],
  );
}

/** The template's own leads, led through the stage's binds; optional windings only when the job names them. */
function templateLeads(part: StagePart, stage: StageSurvey, written: Readonly<Record<string, unknown>>): Lead[] {
  const lead = (via: string, group: string): Lead => ({
    point: stage.points.get(via) ?? `${stage.id ?? ""}:${via}`,
    group,
    life: "designed",
    path: undefined,
    via,
  });
  const named = recordOf(written.windings);
  const wound = Object.entries(part.windings ?? {}).filter(
    ([id, winding]) => recordOf(named[id]).absent !== true && (winding.optional !== true || id in named),
  );
  return [
    ...(part.between ?? []).map((via) => lead(via, "pair")),
    ...Object.values(part.pins ?? {}).map((via) => lead(via, "pins")),
    ...wound.flatMap(([id, winding]) => winding.between.map((via) => lead(via, `winding ${id}`))),
  ];
}
