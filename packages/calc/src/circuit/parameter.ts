import type { Element } from "./network.ts";
import { CircuitError, type ParameterRef } from "./solution.ts";

/** Values that an element has without saying so. */
const UNSAID: Record<string, number> = { emission: 1 };

function refuse(reference: ParameterRef): never {
  throw new CircuitError("bad-value", `${reference.element} has no parameter ${reference.parameter}`, [], [reference.element]);
}

/**
 * The element with one of its parameters multiplied by a factor. `ohms` of a filament scales its cold and rated
 * resistance together, of a thermistor its resistance at 25 C. A parameter that the element may have but has not
 * (no series resistance, no leakage) stays absent.
 *
 * @throws CircuitError `bad-value` when such an element has no such parameter
 */
export function scaleParameter(element: Element, reference: ParameterRef, factor: number): Element {
  const { parameter } = reference;
  const dot = parameter.lastIndexOf(".");
  if (element.kind === "transformer" && dot > 0) {
    const id = parameter.slice(0, dot);
    const field = parameter.slice(dot + 1);
    if ((field !== "turns" && field !== "ohms") || !element.windings.some((winding) => winding.id === id)) refuse(reference);
    return {
      ...element,
      windings: element.windings.map((winding) => (winding.id === id ? { ...winding, [field]: winding[field] * factor } : winding)),
    };
  }
  if (element.kind === "filament" && parameter === "ohms") {
    return { ...element, coldOhms: element.coldOhms * factor, ratedOhms: element.ratedOhms * factor };
  }
  if (element.kind === "thermistor" && parameter === "ohms") return { ...element, r25Ohms: element.r25Ohms * factor };
  const value = (element as unknown as Record<string, unknown>)[parameter] ?? UNSAID[parameter];
  if (value === undefined && OPTIONAL.has(parameter)) return element;
  if (typeof value !== "number") refuse(reference);
  return { ...element, [parameter]: value * factor } as Element;
}

const OPTIONAL = new Set(["esrOhms", "leakOhms", "dcrOhms", "reverseOhms", "contactOhms", "magnetizingHenries", "dcVolts", "rmsVolts"]);
