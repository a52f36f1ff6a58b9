import type { StageTemplate } from "@underchassis/dataset";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { once, shown, solvedVariants, stressedParts, worstBy } from "../../shared/solvedVariants.ts";

/** common-practice: an aluminium electrolytic stands about a volt the wrong way. */
const REVERSE_VOLTS = 1;

/** Polarised capacitors stand the right way round. */
export const capacitorPolarity: ElectricalRule = {
  code: "UC-703",
  name: "capacitor-polarity",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "Every polarised capacitor has the more positive point first, in every condition",
  why: "Whoever wires it as the template says would see it burst.",
  bad: '"between": ["return", "input"], "polarised": true in a supply with positive output',
  good: '"between": ["input", "return"], "polarised": true',
  check: (run) =>
    rectifierInstead(
      run.template,
      once(
        solvedVariants(run).flatMap((variant) =>
          stressedParts(variant, run.template, "capacitor").flatMap(({ path, role, part, stress }): Complaint[] => {
            const worst = worstBy(stress, ({ meanVolts }) => -meanVolts);
            if (
              run.template.parts.find((one) => one.role === role)?.polarised !== true ||
              worst === undefined ||
              worst.meanVolts >= -REVERSE_VOLTS
            )
              return [];
            return [
              {
                at: { path },
                message: `${part.title.toLowerCase()} stands the wrong way round in ${worst.condition}`,
                received: shown(worst.meanVolts, "V"),
                expected: "its first point the more positive one",
                // Ripple and voltages are off for the same reason.
                rank: -0.5,
              },
            ];
          }),
        ),
      ),
    ),
};

/** Where all of several electrolytics stand the wrong way round, one rectifier does so more likely. */
function rectifierInstead({ parts }: StageTemplate, reversed: Complaint[]): Complaint[] {
  const polarised = parts.filter((part) => part.polarised === true);
  const rectifiers = parts.flatMap(({ kind }, index) => (kind === "rectifier" ? [index] : []));
  const roles = new Set(reversed.map(({ at }) => (at !== undefined && "path" in at ? at.path.join("/") : "")));
  if (polarised.length < 2 || roles.size < polarised.length || rectifiers.length !== 1) return reversed;
  return [
    {
      at: { path: ["parts", rectifiers[0] ?? 0, "role"] },
      message: "every electrolytic stands the wrong way round, so the rectifier probably does",
      expected: "its anode first, toward the source; for a negative supply its cathode toward the source",
      rank: -0.6,
    },
  ];
}
