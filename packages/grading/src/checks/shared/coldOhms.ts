import { ohmmeter } from "@underchassis/calc";
import type { ChassisModel, CompiledNetwork, Life, Prediction } from "../../model/index.ts";

/** The condition in which cold resistances are read: the built-in one unless the job replaced it. */
export function coldCondition(model: ChassisModel): string | undefined {
  return model.conditions.has("cold") ? "cold" : [...model.conditions.values()].find(({ powered }) => !powered)?.id;
}

/** What an ohmmeter should show between two points with the power off, and its window. */
export function predictCold(model: ChassisModel, life: Life, at: string, to: string, accuracy = 0.01): Prediction | undefined {
  const condition = coldCondition(model);
  return condition === undefined
    ? undefined
    : model.predict({ life, condition, line: "actual" }, { quantity: "ohms", at, to }, { ohms: 10e6, accuracy });
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
