import { type Element, elementPoints } from "@underchassis/calc";
import { poweredConditions } from "../checks/shared/stress.ts";
import { LINE } from "../compile/compile.ts";
import type { ChassisModel, Diagnostic } from "../model/index.ts";

/**
 * Up to these sizes of a network on the line a whole grading takes about ten seconds of one processor core. Time goes with capacitors
 * and coils (transformers among them) times the square of the points; `work` is that product. Measured on ladders beyond the limit:
 * 61 of them and 164 points 15 s, 31 and 234 19 s, 89 and 262 92 s.
 */
const LIMITS = { storing: 90, points: 270, work: 750_000 } as const;
/** Networks of batteries alone have no period to run through: 500 points take 2 s. */
const POINTS_WITHOUT_LINE = 1000;

/** A problem where a powered network of the job has more capacitors and coils, or more points, than are simulated in reasonable time. */
export function networkTooLarge(model: ChassisModel): Diagnostic | undefined {
  for (const life of ["restored", "designed"] as const) {
    for (const { id } of poweredConditions(model)) {
      const { elements } = model.compile({ life, condition: id, line: "actual" }).network;
      const onLine = elements.some((element) => element.id === LINE);
      const storing = elements.filter(({ kind }) => STORING.has(kind)).length;
      const points = new Set(elements.flatMap(elementPoints)).size;
      const most = onLine ? mostPoints(storing) : POINTS_WITHOUT_LINE;
      if (storing > LIMITS.storing) return problem(model, `${storing} capacitors and coils`, `at most ${LIMITS.storing}`, id);
      if (points > most) {
        const beside = onLine ? ` with ${storing} capacitors and coils` : "";
        return problem(model, `${points} points${beside}`, `at most ${most} points${beside}`, id);
      }
    }
  }
  return undefined;
}

/** How many points a network on the line may have beside so many capacitors and coils. */
function mostPoints(storing: number): number {
  return Math.min(LIMITS.points, Math.floor(Math.sqrt(LIMITS.work / Math.max(1, storing))));
}

const STORING: ReadonlySet<Element["kind"]> = new Set<Element["kind"]>(["capacitor", "inductor", "transformer"]);

function problem(model: ChassisModel, received: string, expected: string, condition: string): Diagnostic {
  return {
    code: "network-too-large",
    severity: "error",
    file: model.file,
    message: `the network is too large to be simulated: ${received} in the condition "${condition}"`,
    received,
    expected,
    help: "write the set as several jobs, one for each supply and what it feeds, with loads for the rest",
  };
}
