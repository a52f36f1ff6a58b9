import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { outcomesOf } from "../../shared/expectedOutcomes.ts";
import { once, shown, solvedVariants, stressedParts } from "../../shared/solvedVariants.ts";

/** Share of the largest current at which a rectifier counts as not conducting. */
const NOTHING = 1e-6;

/** Rectifiers conduct, and make the output that is expected. */
export const rectifierDirection: ElectricalRule = {
  code: "UC-708",
  name: "rectifier-direction",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "Every rectifier conducts in some condition, and every expected direct voltage has the sign of its window",
  why: "One rectifier the wrong way round gives no voltage, or the wrong one, on the bench as here.",
  bad: '"between": ["cathode", "hv"] for a supply with positive output',
  good: '"between": ["hv", "cathode"]',
  check: (run) =>
    once(
      solvedVariants(run).flatMap((variant): Complaint[] => {
        const dead = stressedParts(variant, run.template, "rectifier").flatMap(({ path, stress }): Complaint[] =>
          stress.length > 0 && stress.every(({ meanAmps, peakAmps }) => Math.abs(meanAmps) < NOTHING && peakAmps < 1e3 * NOTHING)
            ? [{ at: { path }, message: "the rectifier never conducts", expected: "its anode first, toward the source", rank: -0.6 }]
            : [],
        );
        if (variant.optional) return dead;
        const wrong = outcomesOf(variant, run.template).flatMap(({ index, quantity, low, high, simulated }): Complaint[] => {
          const middle = low === undefined || high === undefined ? undefined : (low + high) / 2;
          if (quantity !== "dc-volts" || middle === undefined || simulated === undefined || low! * high! <= 0 || simulated * middle >= 0)
            return [];
          return [
            {
              at: { path: ["expected", index, "low"] },
              message: "the simulated voltage has the other sign",
              received: shown(simulated, "V"),
              expected: `${low} to ${high} V`,
              rank: -0.5,
            },
          ];
        });
        return [...dead, ...wrong];
      }),
    ),
};
