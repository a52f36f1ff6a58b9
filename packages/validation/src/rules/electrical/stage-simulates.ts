import type { StageTemplate } from "@underchassis/dataset";
import { poweredConditions } from "@underchassis/grading";
import type { Complaint, ElectricalRule, Target } from "../../model/rule.ts";
import { loneliest } from "../../shared/pointPlaces.ts";
import { once } from "../../shared/solvedVariants.ts";

/** A template with its typical surroundings simulates. */
export const stageSimulates: ElectricalRule = {
  code: "UC-701",
  name: "stage-simulates",
  scope: "electrical",
  of: "template",
  severity: "error",
  title: "A template simulates with its typical surroundings in every powered condition, with and without its optional parts",
  why: "A stage that cannot be simulated alone cannot be simulated in a chassis.",
  bad: "a point that nothing holds at a voltage",
  good: "a resistor from it to the return",
  check: ({ template, variants }) =>
    once(
      variants.flatMap(({ optional, built }): Complaint[] => {
        const how = optional ? "with its optional parts" : "without its optional parts";
        if (!built.ok)
          return built.diagnostics.map(({ message, received, help }) => ({
            at: placeOf(template, namedIn(received)),
            message,
            ...(received === undefined ? {} : { received }),
            ...(help === undefined ? {} : { help }),
            rank: -1,
          }));
        return poweredConditions(built.model).flatMap(({ id }): Complaint[] => {
          const solved = built.model.solve({ life: "restored", condition: id, line: "high" });
          return solved.ok
            ? []
            : [
                {
                  at: placeOf(template, solved.points),
                  message: solved.message,
                  received: solved.parts.join(", "),
                  help: `${how}, in ${id}`,
                  rank: -1,
                },
              ];
        });
      }),
      // The other conditions mostly fail of the same cause.
    ).slice(0, 1),
};

/** The points that a fault of the circuit names: "points: a, stage:b; parts: ...". */
function namedIn(received = ""): string[] {
  return /^points: ([^;]*)/.exec(received)?.[1]?.split(", ") ?? [];
}

/** Where to look first: at the point that hangs in the air, else at the list of parts. Inner points bear the name of their stage. */
function placeOf(template: StageTemplate, points: readonly string[]): Target {
  const place = loneliest(
    template,
    points.map((name) => name.slice(name.indexOf(":") + 1)),
  );
  return place === undefined ? { path: ["parts"], part: "key" } : { path: place.path };
}
