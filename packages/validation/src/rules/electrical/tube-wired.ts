import type { StageTemplate } from "@underchassis/dataset";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { once, solvedVariants, stressedParts } from "../../shared/solvedVariants.ts";

/** The electrodes that a tube's type brings out are those that the template wires. */
export const tubeWired: ElectricalRule = {
  code: "UC-714",
  name: "tube-wired",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "A pentode's screen is wired, and a triode has none to be wired",
  why: "A screen in the air passes no plate current; a triode in a pentode's place reads other voltages throughout.",
  bad: '"type": "6SJ7", "pins": { "plate": "plate", "grid": "input", "cathode": "cathode" }',
  good: '"type": "6J5", "pins": { "plate": "plate", "grid": "input", "cathode": "cathode" }',
  check: (run) =>
    once(
      solvedVariants(run).flatMap((variant) =>
        stressedParts(variant, run.template, "tube").flatMap(({ path, role, state }) =>
          fault(run.template, path[1] as number, role, state),
        ),
      ),
    ),
};

function fault(template: StageTemplate, index: number, role: string, state: { type?: string; device?: { kind: string } }): Complaint[] {
  const pins = template.parts[index]?.pins ?? {};
  const wired = Object.hasOwn(pins, "screen");
  if (state.device?.kind === "pentode" && !wired)
    return [
      {
        at: { path: ["parts", index, "type"] },
        message: `${state.type ?? "the type"} has a screen, and "${role}" wires none`,
        received: Object.keys(pins).join(", "),
        expected: '"screen" among the pins (on the plate\'s point for a triode connection), or the type of a triode',
        rank: -0.8,
      },
    ];
  if (state.device?.kind === "triode" && wired)
    return [
      {
        at: { path: ["parts", index, "pins", "screen"], part: "key" },
        message: `${state.type ?? "the type"} has no screen`,
        received: "screen",
        expected: "no such pin, or the type of a pentode",
        rank: -0.8,
      },
    ];
  return [];
}
