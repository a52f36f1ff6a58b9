/** A healthy chassis is never the nominal one: every value lies somewhere within its tolerance. */
import type { Element, Network } from "@underchassis/calc";
import type { CompiledNetwork } from "../../../packages/grading/src/model/index.ts";
import { Random } from "../random.ts";

/** Half-width of the outlet's voltage while readings are taken. common-practice. */
const LINE_SPREAD = 0.015;
const TUBE_PARAMETERS = new Set(["emission", "perveance"]);

/** The element with one parameter multiplied; `winding.turns` and `winding.ohms` name a winding's. */
export function scaled(element: Element, parameter: string, factor: number): Element {
  const [winding, field] = parameter.split(".");
  if (element.kind === "transformer") {
    if (field !== "turns" && field !== "ohms") throw new Error(`${element.id} has no ${parameter}`);
    return {
      ...element,
      windings: element.windings.map((each) => (each.id === winding ? { ...each, [field]: each[field] * factor } : each)),
    };
  }
  const value = (element as unknown as Record<string, unknown>)[parameter] ?? (parameter === "emission" ? 1 : undefined);
  if (typeof value !== "number") throw new Error(`${element.id} has no ${parameter}`);
  return { ...element, [parameter]: value * factor };
}

/**
 * Draws every uncertain value: evenly within its tolerance, tubes normally with a third of their spread. A value hangs on the
 * seed, the element and the parameter alone, so the same chassis is drawn in every condition.
 */
export function perturb(compiled: CompiledNetwork, seed: string): Network {
  const elements = new Map(compiled.network.elements.map((element) => [element.id, element]));
  for (const { ref, minus, plus } of compiled.uncertain) {
    const element = elements.get(ref.element);
    if (element === undefined) continue;
    const random = new Random(seed, ref.element, ref.parameter);
    let factor = 1 + random.between(-minus, plus);
    if (element.kind === "voltage-source" && element.rmsVolts !== undefined) factor = 1 + random.between(-LINE_SPREAD, LINE_SPREAD);
    else if (TUBE_PARAMETERS.has(ref.parameter)) factor = 1 + (Math.max(-3, Math.min(3, random.normal())) * plus) / 3;
    elements.set(ref.element, scaled(element, ref.parameter, factor));
  }
  return { ...compiled.network, elements: [...elements.values()] };
}
