import { CircuitError, type Element, solveSteady, type SteadyState } from "@underchassis/calc";
import type { ChassisModel, Solved } from "../../model/index.ts";

/**
 * A solved network again with some elements changed: what the same chassis does with another part in one place.
 *
 * @param change the element as it should be, or several, or none; called for every element
 * @returns undefined when the altered network cannot be solved
 */
export function altered(model: ChassisModel, solved: Extract<Solved, { ok: true }>, change: (element: Element, part: string | undefined) => readonly Element[]): SteadyState | undefined {
  const { compiled, steady } = solved;
  const elements = compiled.network.elements.flatMap((element) => change(element, compiled.origins.get(element.id)?.part));
  try {
    return solveSteady({ ...compiled.network, elements }, { hertz: model.line.hertz, warmStart: steady });
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}
