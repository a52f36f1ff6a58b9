import type { ChassisModel, Condition, Life, Solved } from "../../model/index.ts";

/** What one part has to bear in one situation. SI. */
export interface Stress {
  condition: string;
  lineVolts: number;
  /** Largest magnitude of the voltage across the part. */
  maxVolts: number;
  /** Largest voltage against a rectifier's (or polarised part's) direction. */
  inverseVolts: number;
  meanVolts: number;
  /** RMS of the alternating part. */
  acVolts: number;
  rippleVolts: number;
  meanAmps: number;
  rmsAmps: number;
  peakAmps: number;
  watts: number;
  /** Tubes: current and heat of each electrode. */
  electrodes?: Record<string, { meanAmps: number; watts: number }>;
}

type Line = "high" | "actual" | "low" | "design";

const kept = new WeakMap<ChassisModel, Map<string, ReadonlyMap<string, readonly Stress[]>>>();

/** Conditions in which the set has power, in the order that they are met at the bench. */
export function poweredConditions(model: ChassisModel): Condition[] {
  return [...model.conditions.values()].filter((condition) => condition.powered);
}

/** Simulations of a life in every powered condition at one line voltage, failures included. */
export function solveAll(model: ChassisModel, life: Life, line: Line): { condition: Condition; solved: Solved }[] {
  return poweredConditions(model).map((condition) => ({ condition, solved: model.solve({ life, condition: condition.id, line }) }));
}

/**
 * What each part has to bear in every powered condition, at the highest line unless told otherwise. A part with several
 * elements (two plates, two halves of a winding) gives one entry an element.
 */
export function stresses(model: ChassisModel, life: Life, line: Line = "high"): ReadonlyMap<string, readonly Stress[]> {
  const perModel = kept.get(model) ?? new Map<string, ReadonlyMap<string, readonly Stress[]>>();
  kept.set(model, perModel);
  const key = `${life} ${line}`;
  const known = perModel.get(key);
  if (known !== undefined) return known;
  const result = new Map<string, Stress[]>();
  for (const { condition, solved } of solveAll(model, life, line)) {
    if (!solved.ok) continue;
    for (const [id, figures] of solved.steady.elements) {
      const origin = solved.compiled.origins.get(id) ?? solved.compiled.origins.get(id.split(".")[0] ?? id);
      if (origin === undefined || origin.aspect === "heater") continue;
      const stress: Stress = {
        condition: condition.id,
        lineVolts: lineVoltsOf(model, line),
        maxVolts: Math.max(Math.abs(figures.maxVolts), Math.abs(figures.minVolts)),
        inverseVolts: Math.max(0, -figures.minVolts),
        meanVolts: figures.meanVolts,
        acVolts: Math.sqrt(Math.max(0, figures.rmsVolts ** 2 - figures.meanVolts ** 2)),
        rippleVolts: figures.maxVolts - figures.minVolts,
        meanAmps: figures.meanAmps,
        rmsAmps: figures.rmsAmps,
        peakAmps: Math.max(Math.abs(figures.maxAmps), Math.abs(figures.minAmps)),
        watts: figures.watts,
        ...(figures.electrodes === undefined ? {} : { electrodes: figures.electrodes }),
      };
      result.set(origin.part, [...(result.get(origin.part) ?? []), stress]);
    }
  }
  perModel.set(key, result);
  return result;
}

/** The entry of a part in which one figure is largest. */
export function worst(
  entries: readonly Stress[] | undefined,
  by: "maxVolts" | "inverseVolts" | "watts" | "rmsAmps" | "peakAmps" | "meanAmps" | "rippleVolts",
): Stress | undefined {
  return entries?.reduce<Stress | undefined>(
    (best, entry) => (best === undefined || Math.abs(entry[by]) > Math.abs(best[by]) ? entry : best),
    undefined,
  );
}

export function lineVoltsOf(model: ChassisModel, line: Line): number {
  const { line: supply } = model;
  return line === "high"
    ? supply.highVolts
    : line === "low"
      ? supply.lowVolts
      : line === "design"
        ? supply.designVolts
        : supply.actualVolts;
}
