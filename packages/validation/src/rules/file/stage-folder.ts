import { nearestOf, recordOf } from "@underchassis/source-text";
import stageSchema from "../../../../../schemas/stage.schema.json" with { type: "json" };
import type { FileRule } from "../../model/rule.ts";

/** The families of the schema. */
const FAMILIES: readonly string[] = stageSchema.properties.family.enum;

/** A template lies in its family's folder. */
export const stageFolder: FileRule = {
  code: "UC-502",
  name: "stage-folder",
  scope: "file",
  of: "record",
  severity: "error",
  title: "A stage template lies in the folder of its family",
  why: "People look for a stage where its kind lies.",
  bad: 'datasets/stages/audio/supply-bridge.json with "family": "supply"',
  good: 'datasets/stages/supply/supply-bridge.json with "family": "supply"',
  kinds: ["stage"],
  check({ path, value }) {
    const { family } = recordOf(value);
    const folder = path.split("/").at(-2) ?? "";
    if (typeof family !== "string" || family === folder) return [];
    if (!FAMILIES.includes(folder))
      return [
        {
          message: `there is no family "${folder}"`,
          received: folder,
          expected: `the folder of its family: datasets/stages/${family}/`,
          nearest: nearestOf(folder, FAMILIES),
        },
      ];
    return [
      {
        at: { path: ["family"] },
        message: "the family is not the folder",
        received: family,
        expected: folder,
        help: `or move the file to datasets/stages/${family}/`,
      },
    ];
  },
};
