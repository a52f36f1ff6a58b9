import type { Complaint, ElectricalRule } from "../../model/rule.ts";
import { floatingPoints } from "../../shared/floatingPoints.ts";
import { once, solvedVariants } from "../../shared/solvedVariants.ts";

/** Direct current reaches every point. */
export const directPath: ElectricalRule = {
  code: "UC-702",
  name: "direct-path",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "Every point has a path for direct current to the reference, leakage of capacitors not counted",
  why: "A point between capacitors stands at whatever their leakage makes of it; the real stage has a resistor there.",
  bad: "a grid behind a coupling capacitor and nothing else",
  good: "a grid behind a coupling capacitor, with its grid resistor",
  check: (run) =>
    once(
      solvedVariants(run).flatMap(({ model, stage }) => {
        const compiled = model.compile({ life: "restored", condition: "operating", line: "design" });
        const floating = floatingPoints(compiled.network);
        return Object.entries(stage.points).flatMap(([name, point]): Complaint[] => {
          const network = compiled.pointOf(point);
          if (network === undefined || !floating.has(network)) return [];
          const terminal = run.template.terminals.findIndex(({ id }) => id === name);
          return [
            {
              at: terminal < 0 ? { path: ["points", name], part: "key" } : { path: ["terminals", terminal, "id"] },
              message: `no direct current reaches "${name}"`,
              received: name,
              expected: "a resistor, winding or tube that ties it to the rest",
            },
          ];
        });
      }),
    ),
};
