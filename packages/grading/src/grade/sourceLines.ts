import type { Report } from "@underchassis/dataset";
import type { ChassisModel, Finding } from "../model/index.ts";

type SourceLine = Report["sources"][number];

/** Sources that come with the job itself, not with the dataset. */
const OWN: Record<string, SourceLine> = {
  computed: { id: "computed", kind: "computed", title: "Computed from the chassis described in the job" },
  marking: { id: "marking", kind: "published", title: "What is marked on the part, or given by the maker's papers" },
  typical: { id: "typical", kind: "common-practice", title: "Typical value of the stage template, since the job gives none" },
  job: { id: "job", kind: "published", title: "Stated in the job" },
};

/** Every source that a figure, a finding or a caution of the report names, with its kind. */
export function sourceLines(model: ChassisModel, findings: readonly Finding[], cautionIds: readonly string[]): SourceLine[] {
  const ids = new Set<string>();
  for (const finding of findings) {
    for (const id of finding.sources) ids.add(id);
    for (const figure of finding.figures) ids.add(figure.source);
  }
  for (const id of cautionIds) for (const source of model.dataset.cautions.get(id)?.sources ?? []) ids.add(source);
  for (const stage of model.stages) for (const source of stage.template.sources) ids.add(source);
  for (const part of model.parts.values()) {
    const { device } = part.lives.restored;
    if (device !== undefined && "source" in device) ids.add(device.source);
  }
  ids.add(model.line.source);
  return [...ids].sort().flatMap((id) => {
    const own = OWN[id];
    if (own !== undefined) return [own];
    const source = model.dataset.sources.get(id);
    return source === undefined ? [] : [{ id, kind: source.kind as SourceLine["kind"], title: source.title }];
  });
}
