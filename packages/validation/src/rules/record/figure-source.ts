import type { StageTemplate, TubeRecord } from "@underchassis/dataset";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import { gather, nothing } from "../../shared/gather.ts";

/** Every figure says where it comes from. */
export const figureSource: RecordRule = {
  code: "UC-411",
  name: "figure-source",
  scope: "record",
  severity: "error",
  title: "Every figure carries its source: a published work, common-practice or from-memory",
  why: "A figure without a source cannot be checked, and is worth as much as a rumour.",
  bad: '"typical": "20 uF 450 V"',
  good: '"typical": "20 uF 450 V", "source": "common-practice"',
  kinds: ["stage", "tube"],
  check(record) {
    if (record.kind === "tube")
      return (record.value as TubeRecord).units.flatMap(({ parameters, source }, index) =>
        parameters !== undefined && source === undefined ? lacking(["units", index, "parameters"], "the parameters") : [],
      );
    return gather((record.value as StageTemplate).parts, (part, index) => {
      if (part.source !== undefined) return nothing();
      if (part.typical !== undefined) return lacking(["parts", index, "typical"], "the typical value");
      if (part.type !== undefined) return lacking(["parts", index, "type"], "the typical type");
      return part.windings === undefined ? nothing() : lacking(["parts", index, "windings"], "the windings' values");
    });
  },
};

function lacking(path: (string | number)[], what: string): Complaint[] {
  return [
    {
      at: { path, part: "key" },
      message: `${what} ${what.endsWith("s") ? "carry" : "carries"} no source`,
      expected: 'a "source" beside it: an id of datasets/sources.csv',
    },
  ];
}
