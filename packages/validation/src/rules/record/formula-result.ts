import type { RecordRule } from "../../model/rule.ts";
import { formulasIn } from "../../shared/formulasIn.ts";
import { gather, nothing } from "../../shared/gather.ts";

/** A requirement compares; an expected figure is a number. */
export const formulaResult: RecordRule = {
  code: "UC-402",
  name: "formula-result",
  scope: "record",
  severity: "error",
  title: "A requirement's formula compares something of the stage, an expected figure's gives a number",
  why: "A requirement that only computes never fails; a figure that only compares cannot be shown.",
  bad: '"requirements": [{ "formula": "1.1 * reservoir.maxVolts" }]',
  good: '"requirements": [{ "formula": "reservoir.ratedVolts >= 1.1 * reservoir.maxVolts" }]',
  kinds: ["stage", "rule-of-thumb"],
  check: (record) =>
    gather(formulasIn(record), ({ text, path, wanted, parsed }) =>
      !parsed.ok || parsed.gives === wanted
        ? parsed.ok && wanted === "truth" && parsed.names.length + parsed.points.length === 0
          ? [
              {
                at: { path, within: { offset: 0, length: text.length } },
                message: "a requirement that looks at nothing",
                received: text,
                expected: "a part, a point or a setting on one side at least",
              },
            ]
          : nothing()
        : [
            {
              at: { path, within: { offset: 0, length: text.length } },
              message: wanted === "truth" ? "a requirement that compares nothing" : "a figure that is a comparison",
              received: text,
              expected: wanted === "truth" ? "a comparison: what must hold" : "a number: no comparison",
            },
          ],
    ),
};
