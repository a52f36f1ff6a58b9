import type { FormulaValues } from "@underchassis/calc/expression";
import type { ChassisModel, Condition, DeviceLimits, Life, PartState, Solved, Stage } from "../../model/index.ts";
import { endsOf } from "./layout.ts";
import { lineVoltsOf, type Stress, stresses } from "./stress.ts";

type Solution = Extract<Solved, { ok: true }>;
type Line = "high" | "actual" | "low" | "design";

/** Properties that come from the part itself. */
const OWN: Readonly<Record<string, (state: PartState) => number | undefined>> = {
  ohms: (state) => (state.load !== undefined && "ohms" in state.load ? state.load.ohms : state.main?.value),
  farads: (state) => state.main?.value,
  henries: (state) => state.main?.value,
  r25Ohms: (state) => state.main?.value,
  dcrOhms: (state) => state.dcr?.value,
  ratedVolts: (state) => state.ratedVolts,
  ratedWatts: (state) => state.ratedWatts,
  ratedAmps: (state) => state.ratedAmps,
  joules: (state) => state.joules,
};

/** Kinds that `main` is a value of: asking a capacitor for ohms gives nothing. */
export const MAIN_OF: Readonly<Record<string, readonly string[]>> = {
  ohms: ["resistor", "potentiometer", "load"],
  farads: ["capacitor"],
  henries: ["inductor"],
  r25Ohms: ["thermistor"],
};

const LIMITS: Readonly<Record<string, keyof DeviceLimits>> = {
  limitPlateVolts: "plateVolts",
  limitPlateWatts: "plateWatts",
  limitScreenVolts: "screenVolts",
  limitScreenWatts: "screenWatts",
  limitCathodeAmps: "cathodeAmps",
  limitInverseVolts: "peakInverseVolts",
  limitDcAmps: "dcAmps",
  limitPeakAmps: "peakAmps",
  limitInputFarads: "maxInputFarads",
  limitSupplyOhms: "minSupplyOhms",
};

const STRESS: ReadonlySet<string> = new Set([
  "meanVolts",
  "maxVolts",
  "acVolts",
  "rippleVolts",
  "meanAmps",
  "rmsAmps",
  "peakAmps",
  "watts",
  "inverseVolts",
]);

/** Properties of tubes, from the plate's figures and those of the other electrodes. */
const TUBE: Readonly<Record<string, (stress: Stress, pin: (name: string) => number | undefined) => number | undefined>> = {
  plateVolts: (stress) => stress.meanVolts,
  plateAmps: (stress) => stress.meanAmps,
  plateWatts: (stress) => stress.watts - Object.values(stress.electrodes ?? {}).reduce((sum, { watts }) => sum + watts, 0),
  screenAmps: (stress) => stress.electrodes?.screen?.meanAmps,
  screenWatts: (stress) => stress.electrodes?.screen?.watts,
  cathodeAmps: (stress) => stress.meanAmps + Object.values(stress.electrodes ?? {}).reduce((sum, { meanAmps }) => sum + meanAmps, 0),
  screenVolts: (_stress, pin) => pin("screen"),
  gridVolts: (_stress, pin) => pin("grid"),
};

/** Every property that a formula may ask of a part. */
export const PART_PROPERTIES: readonly string[] = ["present", ...[OWN, LIMITS, TUBE].flatMap((list) => Object.keys(list)), ...STRESS];

/** The values of a stage's formula in one life and condition. */
export interface StageValues extends FormulaValues {
  /** False when the chassis has no such part, so that a formula about it says nothing. */
  has(role: string): boolean;
}

/**
 * What names and points of a template's formulas stand for, SI units: properties of its parts, figures of the simulation, settings
 * of the stage, `lineVolts` and `lineHertz`. A part with several elements (two plates) gives the largest magnitude of them.
 */
export function stageValues(model: ChassisModel, stage: Stage, life: Life, condition: Condition, line: Line): StageValues {
  const solved = model.solve({ life, condition: condition.id, line });
  const solution = solved.ok ? solved : undefined;
  const stateOf = (role: string): PartState | undefined => {
    const id = stage.parts[role];
    return id === undefined ? undefined : model.parts.get(id)?.lives[life];
  };
  return {
    has: (role) => stateOf(role)?.present === true,
    name(name) {
      if (name === "lineVolts") return lineVoltsOf(model, line);
      if (name === "lineHertz") return model.line.hertz;
      if (Object.hasOwn(stage.settings, name)) return stage.settings[name];
      const [role = "", property = ""] = name.split(".");
      const state = stateOf(role);
      if (property === "present") return state?.present === true ? 1 : 0;
      if (state?.present !== true) return undefined;
      const kind = model.parts.get(stage.parts[role] ?? "")?.kind ?? "";
      if (Object.hasOwn(OWN, property)) return MAIN_OF[property]?.includes(kind) === false ? undefined : OWN[property]?.(state);
      const limit = Object.hasOwn(LIMITS, property) ? LIMITS[property] : undefined;
      if (limit !== undefined) return numeric(state.limits?.[limit]);
      return simulated(model, stage, role, property, state, life, condition, line, solution);
    },
    point(quantity, point) {
      const name = solution?.compiled.pointOf(stage.points[point] ?? `${stage.id}:${point}`);
      const figures = name === undefined ? undefined : solution?.steady.points.get(name);
      if (figures === undefined) return name !== undefined && name === solution?.compiled.network.reference ? 0 : undefined;
      return quantity === "volts" ? figures.meanVolts : figures.maxVolts - figures.minVolts;
    },
  };
}

const numeric = (value: unknown): number | undefined => (typeof value === "number" ? value : undefined);

function simulated(
  model: ChassisModel,
  stage: Stage,
  role: string,
  property: string,
  state: PartState,
  life: Life,
  condition: Condition,
  line: Line,
  solution: Solution | undefined,
): number | undefined {
  const entries = (stresses(model, life, line).get(stage.parts[role] ?? "") ?? []).filter((entry) => entry.condition === condition.id);
  const voltsAt = (point: string | undefined): number | undefined => {
    const name = point === undefined ? undefined : solution?.compiled.pointOf(point);
    if (name === undefined) return undefined;
    return name === solution?.compiled.network.reference ? 0 : solution?.steady.points.get(name)?.meanVolts;
  };
  const across = (from: string | undefined, to: string | undefined): number | undefined => {
    const [a, b] = [voltsAt(from), voltsAt(to)];
    return a === undefined || b === undefined ? undefined : a - b;
  };
  if (STRESS.has(property)) {
    if (entries.length > 0)
      return entries
        .map((entry) => entry[property as "meanVolts"])
        .reduce((worst, value) => (Math.abs(value) > Math.abs(worst) ? value : worst));
    // An open switch is no element: no current, and what its two points stand at.
    const ends = endsOf(state);
    if (solution === undefined || ends === undefined || model.parts.get(stage.parts[role] ?? "")?.kind !== "switch") return undefined;
    return /Amps$|^watts$/.test(property) ? 0 : property === "meanVolts" ? across(...ends) : undefined;
  }
  const tube = Object.hasOwn(TUBE, property) ? TUBE[property] : undefined;
  const entry = entries[0];
  return tube === undefined || entry === undefined ? undefined : tube(entry, (pin) => across(state.pins[pin], state.pins.cathode));
}
