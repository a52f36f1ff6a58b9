import type { StageTemplate } from "@underchassis/dataset";
import { poweredConditions, type Stress, surroundName } from "@underchassis/grading";
import type { Complaint, ElectricalRule, Target } from "../../model/rule.ts";
import type { TemplateRun } from "../../model/subjects.ts";
import { loneliest } from "../../shared/pointPlaces.ts";
import { once, type StressedPart, solvedVariants, stressedParts } from "../../shared/solvedVariants.ts";

/** A template with its typical surroundings simulates. */
export const stageSimulates: ElectricalRule = {
  code: "UC-701",
  name: "stage-simulates",
  scope: "electrical",
  of: "template",
  phase: "sense",
  severity: "error",
  title: "A template simulates with its typical surroundings in every powered condition, with and without its optional parts",
  why: "A stage that cannot be simulated alone cannot be simulated in a chassis.",
  bad: "a point that nothing holds at a voltage",
  good: "a resistor from it to the return",
  check: ({ file, template, variants }) =>
    once(
      variants.flatMap(({ optional, built }): Complaint[] => {
        const how = optional
          ? "with its optional parts, "
          : template.parts.some((part) => part.optional)
            ? "without its optional parts, "
            : "";
        if (!built.ok)
          return built.diagnostics.map(({ message, received, help }) => ({
            at: (namedIn(received).length === 0 ? surroundIn(template, message) : undefined) ?? placeOf(template, namedIn(received)),
            message,
            ...(received === undefined ? {} : { received }),
            ...(help === undefined ? {} : { help }),
            rank: -1,
          }));
        const absurd = absurdities({ variants: [{ optional, built }], file, template });
        if (absurd.length > 0) return absurd;
        return poweredConditions(built.model).flatMap(({ id }): Complaint[] => {
          const solved = built.model.solve({ life: "restored", condition: id, line: "high" });
          return solved.ok
            ? []
            : [
                {
                  at: placeOf(template, solved.points),
                  message: solved.message,
                  received: solved.parts.join(", "),
                  help: `${how}in ${id}`,
                  rank: -1,
                },
              ];
        });
      }),
      // The other conditions mostly fail of the same cause.
    ).slice(0, 1),
};

/** No part of a chassis carries as much: only a source that is shorted through the part does. */
const ABSURD_AMPS = 1e3;
/** No point of a chassis lies as high: only a load pulls one there that draws its current from nothing but the insulation. */
const ABSURD_VOLTS = 1e6;

/** A network that solves and makes no sense: a source is shorted through a part, or nothing feeds a load. */
function absurdities(run: TemplateRun): Complaint[] {
  const loaded = solvedVariants(run).flatMap((variant) => stressedParts(variant, run.template, ...LOADED));
  const most = (figure: (stress: Stress) => number) => (one: StressedPart) => Math.max(0, ...one.stress.map(figure).map(Math.abs));
  const [amps, volts] = [most(({ peakAmps }) => peakAmps), most(({ meanVolts }) => meanVolts)];
  const [first] = loaded.toSorted((a, b) => amps(b) - amps(a));
  if (first !== undefined && amps(first) >= ABSURD_AMPS)
    return [
      {
        at: { path: first.path },
        message: `a source is shorted through ${first.part.title.toLowerCase()}`,
        expected: "a load between every source and the return",
        help: TURNED,
        rank: -1,
      },
    ];
  const unfed = loaded.find((one) => one.part.kind !== "rectifier" && volts(one) >= ABSURD_VOLTS);
  if (unfed === undefined) return [];
  const rectifier = loaded.find(({ part }) => part.kind === "rectifier");
  return [
    {
      at: { path: (rectifier ?? unfed).path },
      message: `no source feeds ${unfed.part.title.toLowerCase()}, and a load draws on it`,
      expected: "a way for direct current from a source to every load",
      help: TURNED,
      rank: -1,
    },
  ];
}

const LOADED = ["rectifier", "tube", "resistor", "inductor", "capacitor", "switch", "wire"];
const TURNED = "look at the order of a rectifier's pins or points: the anode lies toward the source";

/** The points that a fault of the circuit names: "points: a, stage:b; parts: ...". */
function namedIn(received = ""): string[] {
  return /^points: ([^;]*)/.exec(received)?.[1]?.split(", ") ?? [];
}

/** The part of the surroundings that a message names ("resistor 2"). */
function surroundIn({ typical }: StageTemplate, message: string): Target | undefined {
  const index = typical?.parts?.findIndex((part, k) => new RegExp(`\\b${surroundName(part, k)}\\b`).test(message)) ?? -1;
  return index < 0 ? undefined : { path: ["typical", "parts", index] };
}

/** Where to look first: at the point that hangs in the air, else at the list of parts. Inner points bear the name of their stage. */
function placeOf(template: StageTemplate, points: readonly string[]): Target {
  const place = loneliest(
    template,
    points.map((name) => name.slice(name.indexOf(":") + 1)),
  );
  return place === undefined ? { path: ["parts"], part: "key" } : { path: place.path };
}
