import { READING_UNIT } from "@underchassis/dataset";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { outcomesOf } from "../../shared/expectedOutcomes.ts";
import { shown, solvedVariants } from "../../shared/solvedVariants.ts";

/**
 * How far a textbook formula may be from the simulation, as a ratio. The formulas for direct voltage leave out source resistance and
 * the length of the charging pulse; for ripple, I / (2 f C) takes the pulse as infinitely short, which errs high by up to three quarters
 * with a stiff load on a soft winding. common-practice.
 */
const MEAN_RATIO = 1.15;
const RIPPLE_RATIO = 1.75;

/** The textbook's formulas agree with the simulation, as far as they go, and lie in their windows. */
export const expectedFormula: ElectricalRule = {
  code: "UC-710",
  name: "expected-formula",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "The formula of an expected figure comes within 15 % of the simulation, of ripple within three quarters",
  why: "A formula that gives something else is the wrong formula, or has the wrong figures in it.",
  bad: '"formula": "2 * sqrt(2) * 125" for a half-wave supply',
  good: '"formula": "sqrt(2) * 125 - 1"',
  check: (run) =>
    solvedVariants(run)
      .filter(({ optional }) => !optional)
      .flatMap((variant) =>
        outcomesOf(variant, run.template).flatMap(({ index, quantity, simulated, formula }): Complaint[] => {
          if (run.template.expected[index]?.formula === undefined || simulated === undefined) return [];
          const at = { path: ["expected", index, "formula"] };
          if (formula === undefined)
            return [{ at, message: "the formula cannot be worked out", expected: "names that have a value in the simulation" }];
          const most = quantity === "ripple-volts" ? RIPPLE_RATIO : MEAN_RATIO;
          const ratio = formula / simulated;
          if (ratio < most && ratio > 1 / most) return [];
          const unit = READING_UNIT[quantity];
          return [
            {
              at,
              message: "the formula is far from the simulation",
              received: shown(formula, unit),
              expected: `about ${shown(simulated, unit)}`,
            },
          ];
        }),
      ),
};
