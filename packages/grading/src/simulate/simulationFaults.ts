import { poweredConditions } from "../checks/shared/stress.ts";
import type { ChassisModel, Diagnostic, Life } from "../model/index.ts";
import { type Short, shortedSources } from "./shorts.ts";

/**
 * Networks that cannot be simulated, as problems of the job: a floating point, a shorted source, no steady state. The chassis as
 * designed must be solvable; as it stands it must be too, unless a part that is open or taken out explains why not, or wiring across a
 * source, which is a danger of the chassis (check shorted-source) and no fault of the job. Wiring that shorts a source as designed is
 * one, and named.
 */
export function simulationFaults(model: ChassisModel): Diagnostic[] {
  const shorts = shortedSources(model, "designed");
  if (shorts.length > 0) return shorts.map((short) => shortFault(model, short));
  const faults = new Map<string, Diagnostic>();
  const explained = partsAreMissing(model) || shortedSources(model, "restored").length > 0;
  const lives: Life[] = explained ? ["designed"] : ["designed", "restored"];
  for (const life of lives) {
    for (const condition of poweredConditions(model)) {
      const situation = { life, condition: condition.id, line: "actual" } as const;
      // That the designed chassis can be solved at all shows in few steps; the one on the bench is needed in full anyway.
      const solved = model.solve(life === "designed" ? { ...situation, coarse: true } : situation);
      // Parts on the bench with no source among them: nothing to simulate, and nothing wrong with that.
      if (solved.ok || !model.compile(situation).network.elements.some(({ kind }) => kind === "voltage-source")) continue;
      const key = `${solved.code} ${[...solved.points].sort().join(",")}`;
      if (faults.has(key)) continue;
      const part = model.parts.get(solved.parts.find((id) => model.parts.has(id)) ?? "") ?? partAt(model, solved.points[0]);
      faults.set(key, {
        code: `circuit-${solved.code}`,
        severity: "error",
        file: part?.location.file ?? model.file,
        ...(part === undefined ? {} : { line: part.location.line, column: part.location.column }),
        message: solved.message,
        ...(solved.points.length === 0
          ? {}
          : { received: `points: ${solved.points.join(", ")}${solved.parts.length === 0 ? "" : `; parts: ${solved.parts.join(", ")}`}` }),
        ...adviceFor(solved.code),
      });
    }
  }
  return [...faults.values()];
}

function shortFault(model: ChassisModel, { source, points, by }: Short): Diagnostic {
  const names = by.map(({ name }) => name).join(", ");
  return {
    code: "circuit-source-loop",
    severity: "error",
    ...(by[0]?.location ?? { file: model.file }),
    message: `${names} shorts ${source === "line" ? "the line" : source}: ${points.join(" and ")} are joined without resistance`,
    received: names,
    expected: "no source shorted",
    help: 'check the two points of the parts named; a short that was found on the chassis is written with "foundBetween"',
  };
}

function partsAreMissing(model: ChassisModel): boolean {
  return [...model.parts.values()].some((part) => part.lives.designed.present && !part.lives.restored.present);
}

function partAt(model: ChassisModel, point: string | undefined) {
  const id = point === undefined ? undefined : model.points.get(point)?.[0];
  return id === undefined ? undefined : model.parts.get(id);
}

function adviceFor(code: string): Pick<Diagnostic, "expected" | "help"> {
  switch (code) {
    case "floating-point":
      return {
        expected: "a path for direct current from every point to the reference",
        help: "bind the point to the one that it is joined to on the chassis, or add the part (grid leak, bleeder, wire) that holds it",
      };
    case "source-loop":
    case "singular":
      return { expected: "no source shorted, no two sources across each other", help: "check the two points of the parts named" };
    case "no-convergence":
      return {
        expected: "loads that the supply can feed",
        help: "write a load that the supply cannot hold up as a resistance (60 mA at 250 V), and check its size",
      };
    default:
      return {};
  }
}
