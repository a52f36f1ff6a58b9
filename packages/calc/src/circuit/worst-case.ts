import type { Network } from "./network.ts";
import { scaleParameter } from "./parameter.ts";
import type { Sensitivities, SteadyState } from "./solution.ts";
import { solveSteady } from "./steady.ts";
import type { RelativeTolerance } from "./window.ts";

/**
 * Worst cases of one probe, solved and not extrapolated: every part is put at the limit that its sensitivity says moves
 * the probe down (up), and the network is solved there. It holds while no sensitivity changes sign within the tolerances.
 *
 * @param sensitivities from `sensitivities`, of this network
 * @param probe index of the probe
 * @param tolerances one for each parameter; numbers mean plus or minus
 * @returns lowest and highest value found, in the probe's unit
 * @throws CircuitError as `solveSteady`
 */
export function worstCase(
  network: Network,
  sensitivities: Sensitivities,
  probe: number,
  tolerances: readonly (number | RelativeTolerance)[],
  steady?: SteadyState,
): { low: number; high: number } {
  const { parameters, matrix, probes } = sensitivities;
  if (tolerances.length !== parameters.length) throw new RangeError(`${tolerances.length} tolerances for ${parameters.length} parameters`);
  const solveAt = (direction: 1 | -1): number => {
    let elements = [...network.elements];
    parameters.forEach((reference, k) => {
      const tolerance = tolerances[k]!;
      const { minus, plus } = typeof tolerance === "number" ? { minus: tolerance, plus: tolerance } : tolerance;
      const factor = matrix[probe * parameters.length + k]! * direction > 0 ? 1 + plus : 1 - minus;
      elements = elements.map((element) => (element.id === reference.element ? scaleParameter(element, reference, factor) : element));
    });
    return solveSteady({ ...network, elements }, steady === undefined ? {} : { warmStart: steady }).read(probes[probe]!);
  };
  return { low: solveAt(-1), high: solveAt(1) };
}
