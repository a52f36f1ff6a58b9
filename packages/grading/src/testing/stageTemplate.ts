import type { Dataset, StageTemplate } from "@underchassis/dataset";
import { smallDataset } from "./smallDataset.ts";

/** A template with what a test leaves out filled in: fed at `supply`, returned to the chassis. */
export function templateOf(record: Partial<StageTemplate> & Pick<StageTemplate, "id">): StageTemplate {
  return {
    schemaVersion: 1,
    title: record.id,
    family: "supply",
    summary: "A stage made up for a test.",
    terminals: [
      { id: "supply", meaning: "Supply." },
      { id: "return", meaning: "Return.", default: "chassis" },
    ],
    parts: [] as unknown as StageTemplate["parts"],
    expected: [],
    requirements: [],
    cautions: ["high-voltage-stored-charge"],
    sources: ["common-practice"],
    ...record,
  };
}

/** The small dataset with templates of a test's own. */
export function datasetWith(...templates: readonly StageTemplate[]): Dataset {
  return { ...smallDataset(), stages: new Map(templates.map((template) => [template.id, template])) };
}
