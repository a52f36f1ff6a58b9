import type { ElementKind } from "./network.ts";
import type { SteadySolution } from "./steady-solution.ts";
import { waveFigures } from "./wave-figures.ts";

const RECTIFYING: ReadonlySet<ElementKind> = new Set<ElementKind>(["vacuum-diode", "gas-diode", "diode", "selenium"]);

/** A rectifier that stays this share of its inverse voltage away from conducting is not the one that charges its filter. */
const STRANDED_SHARE = 0.002;

/**
 * Whether a rectifier never conducts in a periodic solution. A filter that nothing discharges keeps any charge above the crest, so
 * that a solution which overshot on its way from a neighbour, corrected with the neighbour's transition, passes for a steady state;
 * from empty filters it cannot be reached.
 */
export function isStranded(solution: SteadySolution): boolean {
  const { waves } = solution;
  for (const element of solution.internals.circuit.elements.values()) {
    if (!RECTIFYING.has(element.kind) || !("nodes" in element) || !Array.isArray(element.nodes)) continue;
    const { max, min } = waveFigures(waves.between(element.nodes[0], element.nodes[1]), waves.trajectory.weights, waves.stagesPerStep);
    if (max < -STRANDED_SHARE * Math.abs(min)) return true;
  }
  return false;
}
