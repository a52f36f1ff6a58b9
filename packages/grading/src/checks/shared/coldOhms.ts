import { ohmmeter } from "@underchassis/calc";
import type { ChassisModel, CompiledNetwork, Life, Prediction } from "../../model/index.ts";

/** The condition in which cold resistances are read: the built-in one unless the job replaced it. */
export function coldCondition(model: ChassisModel): string | undefined {
  return model.conditions.has("cold") ? "cold" : [...model.conditions.values()].find(({ powered }) => !powered)?.id;
}

const kept = new WeakMap<ChassisModel, Map<string, Prediction | undefined>>();

/** What an ohmmeter should show between two points with the power off, and its window. Each is worked out once a chassis. */
export function predictCold(model: ChassisModel, life: Life, at: string, to: string, accuracy = 0.01): Prediction | undefined {
  const condition = coldCondition(model);
  if (condition === undefined) return undefined;
  const known = kept.get(model) ?? new Map<string, Prediction | undefined>();
  kept.set(model, known);
  const key = [life, at, to, accuracy].join("\u0000");
  if (!known.has(key))
    known.set(key, model.predict({ life, condition, line: "actual" }, { quantity: "ohms", at, to }, { ohms: 10e6, accuracy }));
  return known.get(key);
}

/** The same without a window, for what is only needed as a number; Infinity for no path. */
export function coldOhms(model: ChassisModel, life: Life, at: string, to: string): number {
  const condition = coldCondition(model);
  return condition === undefined
    ? Number.POSITIVE_INFINITY
    : ohmsWithout(model.compile({ life, condition, line: "actual" }), at, to, new Set());
}

/** Resistance between two points of a network at rest, with some of its elements taken out; Infinity for no path. */
export function ohmsWithout(compiled: CompiledNetwork, from: string, to: string, without: ReadonlySet<string>): number {
  const [a, b] = [compiled.pointOf(from), compiled.pointOf(to)];
  if (a === undefined || b === undefined) return Number.POSITIVE_INFINITY;
  if (a === b) return 0;
  const elements = compiled.network.elements.filter(({ id }) => !without.has(id));
  const touched = (point: string) =>
    elements.some((element) =>
      "nodes" in element ? Object.values(element.nodes).includes(point) : element.windings.some(({ nodes }) => nodes.includes(point)),
    );
  if (!touched(a) || !touched(b)) return Number.POSITIVE_INFINITY;
  return ohmmeter({ ...compiled.network, elements }, a, b, {}).ohms;
}
