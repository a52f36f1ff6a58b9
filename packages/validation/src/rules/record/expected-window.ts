import type { RuleOfThumb, StageTemplate } from "@underchassis/dataset";
import type { Path } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import { gather, nothing } from "../../shared/gather.ts";

/** Windows open upwards. */
export const expectedWindow: RecordRule = {
  code: "UC-410",
  name: "expected-window",
  scope: "record",
  severity: "error",
  title: "A window's low end lies below its high end, and a figure has a window or a formula",
  why: "No reading lies in a window that is upside down.",
  bad: '"low": 173, "high": 150',
  good: '"low": 150, "high": 173',
  kinds: ["stage", "rule-of-thumb", "failure-note"],
  check(record) {
    if (record.kind === "failure-note") {
      const { era } = record.value as { era?: { from?: number; to?: number } };
      return ordered(era?.from, era?.to, ["era", "to"], "the era ends before it begins");
    }
    if (record.kind === "rule-of-thumb")
      return ((record.value as RuleOfThumb).figures ?? []).flatMap(({ low, high }, index) =>
        ordered(low, high, ["figures", index, "high"], "the window is upside down"),
      );
    const { expected, parts } = record.value as StageTemplate;
    const substitutes = gather(parts, ({ substitute }, index) =>
      substitute?.lowest === undefined
        ? nothing()
        : ordered(
            substitute.lowest,
            substitute.highest,
            ["parts", index, "substitute", "highest"],
            "the largest substitute is the smallest",
          ),
    );
    const figures = gather(expected, ({ low, high, formula }, index): readonly Complaint[] => {
      if (low !== undefined && high !== undefined && low < high) return nothing();
      if (low === undefined && high === undefined && formula === undefined)
        return [
          {
            at: { path: ["expected", index] },
            message: "an expected figure without a figure",
            expected: '"low" and "high", or a "formula"',
          },
        ];
      return ordered(low, high, ["expected", index, "high"], "the window is upside down");
    });
    return substitutes.length === 0 ? figures : [...substitutes, ...figures];
  },
};

function ordered(low: number | undefined, high: number | undefined, path: Path, message: string): Complaint[] {
  return low === undefined || high === undefined || low < high
    ? []
    : [{ at: { path }, message, received: String(high), expected: `more than ${low}` }];
}
