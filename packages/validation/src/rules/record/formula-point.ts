import type { StageTemplate } from "@underchassis/dataset";
import { nearestOf, oneOf } from "@underchassis/source-text";
import type { RecordRule } from "../../model/rule.ts";
import { placesOfPoint } from "../../shared/formulaSpans.ts";
import { formulasIn } from "../../shared/formulasIn.ts";
import { gather, nothing } from "../../shared/gather.ts";
import { pointsOf } from "../../shared/pointsOf.ts";

/** Every point of a formula is one of its template. */
export const formulaPoint: RecordRule = {
  code: "UC-405",
  name: "formula-point",
  scope: "record",
  severity: "error",
  title: 'Every point in a formula\'s volts("...") and ripple("...") is a terminal or inner point of its template',
  why: "There is no voltage at a point that is not there.",
  bad: '"formula": "volts(\\"bplus\\") > 200"',
  good: '"formula": "volts(\\"b-plus\\") > 200"',
  kinds: ["stage"],
  check(record) {
    const points = pointsOf(record.value as StageTemplate);
    return gather(formulasIn(record), ({ text, path, parsed }) =>
      parsed.ok && !parsed.points.every((point) => points.has(point))
        ? parsed.points
            .filter((point) => !points.has(point))
            .flatMap((point) =>
              placesOfPoint(text, point).map((within) => ({
                at: { path, within },
                message: `the template has no point "${point}"`,
                received: point,
                expected: oneOf([...points], 30),
                nearest: nearestOf(point, points),
              })),
            )
        : nothing(),
    );
  },
};
