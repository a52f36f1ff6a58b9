import { type TubeWork, workOf } from "@underchassis/grading";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { once, shown, solvedVariants, stressedParts } from "../../shared/solvedVariants.ts";

/** common-practice: design-center sheets are kept to within a tenth. */
const TOLERATED = 1.1;

/** Tubes stay within their limits. */
export const tubeRating: ElectricalRule = {
  code: "UC-707",
  name: "tube-rating",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "No typical tube exceeds its published limits by more than a tenth",
  why: "A typical stage that wears its tube out is no model for a repair.",
  bad: "a 6V6GT at 420 V on its plate",
  good: "a 6V6GT at 250 V",
  check: (run) =>
    once(
      solvedVariants(run).flatMap((variant) =>
        stressedParts(variant, run.template, "tube").flatMap(({ path, part, state }): Complaint[] => {
          const limits = state.limits;
          if (limits === undefined) return [];
          const figures: [string, number | undefined, string, (work: TubeWork) => number | undefined][] = [
            ["plate voltage", limits.plateVolts, "V", ({ plateVolts }) => plateVolts],
            ["plate dissipation", limits.plateWatts, "W", ({ plateWatts }) => plateWatts],
            ["screen voltage", limits.screenVolts, "V", ({ screenVolts }) => screenVolts],
            ["screen dissipation", limits.screenWatts, "W", ({ screenWatts }) => screenWatts],
            ["cathode current", limits.cathodeAmps, "A", ({ cathodeAmps }) => cathodeAmps],
          ];
          const works = workOf(variant.model, "restored", { part, state });
          return figures.flatMap(([what, limit, unit, of]): Complaint[] => {
            if (limit === undefined) return [];
            const over = works.find((work) => (of(work) ?? 0) > TOLERATED * limit);
            return over === undefined
              ? []
              : [
                  {
                    at: { path },
                    message: `the tube's ${what} exceeds its limit in ${over.condition}`,
                    received: shown(of(over) ?? 0, unit),
                    expected: `at most ${shown(limit, unit)}`,
                  },
                ];
          });
        }),
      ),
    ),
};
