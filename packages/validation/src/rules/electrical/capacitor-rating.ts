import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { once, shown, solvedVariants, stressedParts, worstBy } from "../../shared/solvedVariants.ts";

/** Capacitors bear their voltage. */
export const capacitorRating: ElectricalRule = {
  code: "UC-704",
  name: "capacitor-rating",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "No typical capacitor sees more than its rated voltage in any condition",
  why: "The typical value is the one that people buy.",
  bad: '"typical": "20 uF 250 V" where the input stands at 330 V',
  good: '"typical": "20 uF 450 V"',
  check: (run) =>
    once(
      solvedVariants(run).flatMap((variant) =>
        stressedParts(variant, run.template, "capacitor").flatMap(({ path, state, stress }): Complaint[] => {
          // An alternating rating is RMS: its crest is what the part sees.
          const rated = (state.ratedVolts ?? Number.POSITIVE_INFINITY) * (state.ratedVoltsKind === "ac" ? Math.SQRT2 : 1);
          const worst = worstBy(stress, ({ maxVolts }) => maxVolts);
          if (worst === undefined || worst.maxVolts <= rated) return [];
          return [
            {
              at: { path },
              message: `the capacitor sees more than its rated voltage in ${worst.condition}`,
              received: shown(worst.maxVolts, "V"),
              expected: `at most ${shown(rated, "V")}`,
            },
          ];
        }),
      ),
    ),
};
