import { recordOf } from "@underchassis/source-text";
import { KINDS, schemaOf } from "../../model/fileKind.ts";
import type { RecordRule } from "../../model/rule.ts";

/** A record that names another kind's schema was put into the wrong folder. */
export const recordFolder: RecordRule = {
  code: "UC-307",
  name: "record-folder",
  scope: "record",
  phase: "shape",
  severity: "error",
  title: "A record lies in the folder of its kind",
  why: "A tube among stages breaks every line of the stages' schema, and none of these lines is what is wrong.",
  bad: '"$schema": "../../../schemas/tube.schema.json" in datasets/stages/audio',
  good: '"$schema": "../../schemas/tube.schema.json" in datasets/tubes',
  check({ path, kind, value }) {
    const { $schema: written } = recordOf(value);
    const named = /([a-z-]+)\.schema\.json$/.exec(String(written))?.[1];
    const own = schemaOf(kind);
    if (named === undefined || own === undefined || named === own || !KINDS.some((one) => schemaOf(one.kind) === named)) return [];
    return [
      {
        at: { path: ["$schema"] },
        message: `this folder takes records of the kind "${own}", and the file says that it is a "${named}"`,
        received: String(written),
        expected: `the file in the folder of its kind, or "${own}" in place of "${named}"`,
        help: `git mv ${path} to where the other records of that kind lie`,
        rank: -10,
      },
    ];
  },
};
