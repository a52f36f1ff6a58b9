import { poweredConditions } from "../checks/shared/stress.ts";
import type { ChassisModel, Diagnostic, Location } from "../model/index.ts";

/**
 * A warning where a job has parts and nothing of them reaches the line or a battery in any powered condition: its voltages are
 * computed as 0, which is right for parts on the bench and a slip in a chassis.
 *
 * @param at where the job describes its line
 */
export function sourcelessWarnings(model: ChassisModel, at: Location): Diagnostic[] {
  const powered = poweredConditions(model);
  if (model.parts.size === 0 || powered.length === 0) return [];
  const fed = (["designed", "restored"] as const).some((life) =>
    powered.some(({ id }) =>
      model.compile({ life, condition: id, line: "actual" }).network.elements.some(({ kind }) => kind === "voltage-source"),
    ),
  );
  if (fed) return [];
  const { hot, neutral } = model.line;
  return [
    {
      code: "source-missing",
      severity: "warning",
      ...at,
      message: `nothing in this job reaches the line (points ${hot}, ${neutral}) or a battery, so every voltage is computed as 0`,
      help: "give one part the line's hot point, or name the points that the line comes in at in the line's hot and neutral",
    },
  ];
}
