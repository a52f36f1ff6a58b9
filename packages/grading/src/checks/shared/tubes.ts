import type { ChassisModel, Life, Part, PartState } from "../../model/index.ts";
import { allIn } from "./layout.ts";
import { type Stress, stresses } from "./stress.ts";

/** What a tube does in one condition. SI; voltages against its cathode unless named otherwise. */
export interface TubeWork {
  part: Part;
  state: PartState;
  condition: string;
  line: "high" | "actual";
  plateVolts: number;
  plateAmps: number;
  plateWatts: number;
  screenVolts: number | undefined;
  screenAmps: number;
  screenWatts: number;
  cathodeAmps: number;
  gridVolts: number;
  /** Against the reference. */
  cathodeVolts: number;
}

const POWER_CLASSES: ReadonlySet<string> = new Set(["beam-power", "power-pentode", "power-triode"]);
/** from-memory: a tube that may dissipate more than this at its plate is a power tube, whatever its record calls it; a 6SN7GTB may 5 W. */
const POWER_WATTS = 5;

export function isPowerTube(model: ChassisModel, state: PartState): boolean {
  const record = model.dataset.tubes.get((state.type ?? "").toUpperCase());
  return POWER_CLASSES.has(record?.class ?? "") || (state.limits?.plateWatts ?? 0) > POWER_WATTS;
}

/**
 * Line voltage at which a tube's limits are meant: design-center ratings already allow for the line's swing and hold at its usual
 * voltage; design-maximum and absolute ones hold at the highest.
 */
function ratingLine(state: PartState): "high" | "actual" {
  return state.limits?.system === "design-center" ? "actual" : "high";
}

/** Tubes that a conclusion is due about: all that are there; under a plan those of stages that the plan touches. */
export function tubesIn(model: ChassisModel, life: Life): { part: Part; state: PartState }[] {
  const touched = new Set([...model.parts.values()].filter(({ change }) => change === "planned").map(({ stage }) => stage));
  return allIn(model, life, "tube").filter(
    ({ part }) => life !== "planned" || part.change === "planned" || (part.stage !== undefined && touched.has(part.stage)),
  );
}

/** What a tube does in every powered condition in which it is simulated. */
export function workOf(
  model: ChassisModel,
  life: Life,
  { part, state }: { part: Part; state: PartState },
  line = ratingLine(state),
): TubeWork[] {
  return (stresses(model, life, line).get(part.id) ?? []).flatMap((stress) => work(model, life, part, state, stress, line));
}

function work(model: ChassisModel, life: Life, part: Part, state: PartState, stress: Stress, line: "high" | "actual"): TubeWork[] {
  const solved = model.solve({ life, condition: stress.condition, line });
  if (!solved.ok || stress.electrodes === undefined) return [];
  const voltsAt = (pin: string): number | undefined => {
    const point = state.pins[pin];
    const name = point === undefined ? undefined : solved.compiled.pointOf(point);
    return name === undefined ? undefined : name === solved.compiled.network.reference ? 0 : solved.steady.points.get(name)?.meanVolts;
  };
  const cathodeVolts = voltsAt("cathode") ?? 0;
  const screen = voltsAt("screen");
  const { screen: screenFigures, grid } = stress.electrodes;
  const screenWatts = screenFigures?.watts ?? 0;
  const screenAmps = screenFigures?.meanAmps ?? 0;
  return [
    {
      part,
      state,
      condition: stress.condition,
      line,
      plateVolts: stress.meanVolts,
      plateAmps: stress.meanAmps,
      plateWatts: stress.watts - screenWatts - (grid?.watts ?? 0),
      screenVolts: screen === undefined ? undefined : screen - cathodeVolts,
      screenAmps,
      screenWatts,
      cathodeAmps: stress.meanAmps + screenAmps + (grid?.meanAmps ?? 0),
      gridVolts: (voltsAt("grid") ?? 0) - cathodeVolts,
      cathodeVolts,
    },
  ];
}

/** Which line the figures of a finding are for, in words. */
export function lineWords(line: "high" | "actual"): string {
  return line === "high" ? "highest line" : "usual line (design-center ratings allow for its swing)";
}
