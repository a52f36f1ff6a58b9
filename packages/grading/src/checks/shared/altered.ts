import { CircuitError, type Element, type SteadyState, solveSteady } from "@underchassis/calc";
import type { ChassisModel, Solved } from "../../model/index.ts";

/**
 * A solved network again with some elements changed: what the same chassis does with another part in one place.
 * Limiters and lamps keep the resistance that they had warmed to.
 *
 * @param change the element as it should be, or several, or none; called for every element
 * @returns undefined when the altered network cannot be solved
 */
export function altered(
  model: ChassisModel,
  solved: Extract<Solved, { ok: true }>,
  change: (element: Element, part: string | undefined) => readonly Element[],
): SteadyState | undefined {
  const { compiled, steady } = solved;
  const elements = compiled.network.elements.flatMap((element) => change(warmed(element, steady), compiled.origins.get(element.id)?.part));
  try {
    return solveSteady({ ...compiled.network, elements }, { hertz: model.line.hertz, warmStart: steady });
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}

/** A limiter or lamp as the resistor that it is at this heat. */
function warmed(element: Element, steady: SteadyState): Element {
  if (element.kind !== "thermistor" && element.kind !== "filament") return element;
  const figures = steady.elements.get(element.id);
  if (figures === undefined || !(figures.rmsAmps > 0)) return element;
  return { kind: "resistor", id: element.id, nodes: element.nodes, ohms: figures.rmsVolts / figures.rmsAmps };
}
