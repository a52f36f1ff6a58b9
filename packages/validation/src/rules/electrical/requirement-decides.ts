import { FormulaError } from "@underchassis/calc/expression";
import { readRequirement } from "@underchassis/grading";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { idleComparisons } from "../../shared/idleComparisons.ts";

/** Of the electrical rules though it needs no circuit: trying values takes longer than all that is read of a file. */
export const requirementDecides: ElectricalRule = {
  code: "UC-715",
  name: "requirement-decides",
  scope: "electrical",
  of: "template",
  severity: "warning",
  title: "A requirement can fail",
  why: "What holds whatever the parts are finds no fault, and its reader believes that something was checked.",
  bad: '"formula": "bleeder.ratedWatts >= 0.5 * bleeder.ratedWatts"',
  good: '"formula": "bleeder.ratedWatts >= 2 * bleeder.watts"',
  check: ({ template }) =>
    template.requirements.flatMap((requirement, index): Complaint[] => {
      const formula = readRequirement(requirement);
      if (formula instanceof FormulaError) return [];
      return idleComparisons(formula).map((text) => {
        // Blanks may be written otherwise: then the whole formula is pointed at.
        const offset = requirement.formula.indexOf(text);
        const within = offset < 0 ? { offset: 0, length: requirement.formula.length } : { offset, length: text.length };
        return {
          at: { path: ["requirements", index, "formula"], within },
          message: `the requirement "${requirement.id}" holds whatever its names stand for`,
          received: text,
          expected: "a comparison that some chassis would fail",
        };
      });
    }),
};
