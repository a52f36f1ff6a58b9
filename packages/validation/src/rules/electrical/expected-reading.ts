import { READING_UNIT } from "@underchassis/dataset";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { outcomesOf } from "../../shared/expectedOutcomes.ts";
import { shown, solvedVariants } from "../../shared/solvedVariants.ts";

/** Expected figures are what the simulation reads. */
export const expectedReading: ElectricalRule = {
  code: "UC-709",
  name: "expected-reading",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "With its typical values a template reads within its windows",
  why: "People hold their meters against these windows.",
  bad: '"low": 150, "high": 160 where the simulation reads 172 V',
  good: '"low": 150, "high": 180',
  check: (run) =>
    solvedVariants(run)
      .filter(({ optional }) => !optional)
      .flatMap((variant) =>
        outcomesOf(variant, run.template).flatMap(({ index, quantity, low, high, simulated }): Complaint[] => {
          const unit = READING_UNIT[quantity];
          if (simulated === undefined)
            return [
              {
                at: { path: ["expected", index, "title"] },
                message: "the simulation gives no such reading",
                expected: "a point or part that it has",
              },
            ];
          if (simulated >= (low ?? Number.NEGATIVE_INFINITY) && simulated <= (high ?? Number.POSITIVE_INFINITY)) return [];
          const end = simulated < (low ?? Number.NEGATIVE_INFINITY) ? "low" : "high";
          return [
            {
              at: { path: ["expected", index, end] },
              message: `the simulation reads outside the window of "${run.template.expected[index]?.title ?? ""}"`,
              received: shown(simulated, unit),
              expected: `${low ?? "any"} to ${high ?? "any"} ${unit}`,
            },
          ];
        }),
      ),
};
