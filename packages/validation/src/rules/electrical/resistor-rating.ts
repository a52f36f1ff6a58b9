import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { once, shown, solvedVariants, stressedParts, worstBy } from "../../shared/solvedVariants.ts";

/** Resistors bear their power. */
export const resistorRating: ElectricalRule = {
  code: "UC-705",
  name: "resistor-rating",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "No typical resistor dissipates more than its rated power in any condition",
  why: "The typical value is the one that people buy.",
  bad: '"typical": "1 kohm 1 W" at 60 mA',
  good: '"typical": "1 kohm 10 W" at 60 mA',
  check: (run) =>
    once(
      solvedVariants(run).flatMap((variant) =>
        stressedParts(variant, run.template, "resistor", "potentiometer").flatMap(({ path, state, stress }): Complaint[] => {
          const worst = worstBy(stress, ({ watts }) => watts);
          if (worst === undefined || state.ratedWatts === undefined || worst.watts <= state.ratedWatts) return [];
          return [
            {
              at: { path },
              message: `the resistor dissipates more than its rated power in ${worst.condition}`,
              received: shown(worst.watts, "W"),
              expected: `at most ${shown(state.ratedWatts, "W")}`,
            },
          ];
        }),
      ),
    ),
};
