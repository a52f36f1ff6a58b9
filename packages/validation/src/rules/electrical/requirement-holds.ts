import { FormulaError } from "@underchassis/calc/expression";
import { outcomeOf, readRequirement } from "@underchassis/grading";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { once, solvedVariants } from "../../shared/solvedVariants.ts";

/** A template keeps its own requirements. */
export const requirementHolds: ElectricalRule = {
  code: "UC-711",
  name: "requirement-holds",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "Every requirement holds, and can be judged, with the typical values",
  why: "A requirement that the model of a stage breaks would accuse every sound one.",
  bad: '"formula": "ripple(\\"b-plus\\") <= 0.001 * volts(\\"b-plus\\")" where the stage gives 0.4 %',
  good: '"formula": "ripple(\\"b-plus\\") <= 0.01 * volts(\\"b-plus\\")"',
  check: (run) =>
    once(
      solvedVariants(run).flatMap(({ model, stage, optional }) =>
        run.template.requirements.flatMap((requirement, index): Complaint[] => {
          const formula = readRequirement(requirement);
          const outcome = formula instanceof FormulaError ? undefined : outcomeOf(model, stage, "restored", requirement, formula);
          // Without the parts that it is about, a requirement says nothing.
          if (outcome === undefined || outcome.evaluated.value === true) return [];
          const { value, comparisons, missing } = outcome.evaluated;
          const how = optional ? "so it is with the optional parts" : "so it is with the typical values";
          const at = { path: ["requirements", index, "formula"] };
          if (value === false) {
            const failed = comparisons
              .filter(({ holds }) => holds === false)
              .map(({ left = 0, operator, right = 0 }) => `${digits(left)} ${operator} ${digits(right)}`);
            return [{ at, message: `the requirement "${requirement.id}" does not hold`, received: failed.join(", "), help: how }];
          }
          return [
            {
              at,
              message: `the requirement "${requirement.id}" cannot be judged`,
              received: missing.join(", "),
              expected: "names that have a value",
              help: how,
            },
          ];
        }),
      ),
    ),
};

const digits = (value: number): string => String(Number(value.toPrecision(4)));
