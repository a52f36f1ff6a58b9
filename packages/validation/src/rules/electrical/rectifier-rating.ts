import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { once, shown, solvedVariants, stressedParts, worstBy } from "../../shared/solvedVariants.ts";

/** Rectifiers bear their inverse voltage and their current. */
export const rectifierRating: ElectricalRule = {
  code: "UC-706",
  name: "rectifier-rating",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "No typical rectifier sees more inverse voltage, mean current or input capacity than its limits",
  why: "Rectifiers fail short, and take the transformer with them.",
  bad: '"type": "1N4004" on a 350-0-350 V winding',
  good: '"type": "1N4007", two in series',
  check: (run) =>
    once(
      solvedVariants(run).flatMap((variant) =>
        stressedParts(variant, run.template, "rectifier").flatMap(({ path, state, stress }): Complaint[] => {
          const { peakInverseVolts, dcAmps, maxInputFarads = Number.POSITIVE_INFINITY } = state.limits ?? {};
          const [inverse, mean] = [worstBy(stress, ({ inverseVolts }) => inverseVolts), worstBy(stress, ({ meanAmps }) => meanAmps)];
          // A tube's limit is for both its plates together.
          const amps = (mean?.meanAmps ?? 0) * (stress.filter(({ condition }) => condition === mean?.condition).length || 1);
          const tooLarge = stressedParts(variant, run.template, "capacitor").filter(
            (capacitor) => capacitor.part.duty === "filter-input" && (capacitor.state.main?.value ?? 0) > maxInputFarads,
          );
          return [
            ...tooLarge.map((capacitor) => ({
              at: { path: [...capacitor.path.slice(0, -1), "typical"] },
              message: "the input capacitor is larger than the rectifier's type allows",
              received: `${Number((1e6 * (capacitor.state.main?.value ?? 0)).toPrecision(3))} uF`,
              expected: `at most ${Number((1e6 * maxInputFarads).toPrecision(3))} uF`,
              rank: -0.4,
            })),
            ...(inverse !== undefined && peakInverseVolts !== undefined && inverse.inverseVolts > peakInverseVolts
              ? [
                  {
                    at: { path },
                    message: `the rectifier sees more inverse voltage than its limit in ${inverse.condition}`,
                    received: shown(inverse.inverseVolts, "V"),
                    expected: `at most ${shown(peakInverseVolts, "V")}`,
                  },
                ]
              : []),
            ...(mean !== undefined && dcAmps !== undefined && amps > dcAmps
              ? [
                  {
                    at: { path },
                    message: `the rectifier carries more than its limit in ${mean.condition}`,
                    received: shown(amps, "A"),
                    expected: `at most ${shown(dcAmps, "A")}`,
                  },
                ]
              : []),
          ];
        }),
      ),
    ),
};
