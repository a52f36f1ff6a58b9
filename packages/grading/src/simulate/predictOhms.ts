import type { Network, ohmmeter as ohmmeterOf } from "@underchassis/calc";
import type { CompiledNetwork, Prediction } from "../model/index.ts";
import { spreadOf } from "./spread.ts";

/** Relative step of the differences; networks of resistors are smooth. */
const STEP = 1e-4;

/**
 * What an ohmmeter shows between two points with the power off, parallel paths included, and its window.
 * Differences over each uncertain resistance give the slopes: such a network solves in microseconds.
 */
export function predictOhms(compiled: CompiledNetwork, at: string, to: string, accuracy: number, ohmmeter: typeof ohmmeterOf): Prediction | undefined {
  const [from, other] = [compiled.pointOf(at), compiled.pointOf(to)];
  if (from === undefined || other === undefined) return undefined;
  const nominal = ohmmeter(compiled.network, from, other, {}).ohms;
  if (!Number.isFinite(nominal)) {
    return { nominal, low: 20e6, high: nominal, sigma: Number.POSITIVE_INFINITY, worstLow: 20e6, worstHigh: nominal, contributors: [] };
  }
  const slopes = compiled.uncertain.map(({ ref }) => {
    const changed = withChange(compiled.network, ref.element, ref.parameter);
    return changed === undefined ? 0 : (ohmmeter(changed, from, other, {}).ohms - nominal) / STEP;
  });
  const spread = spreadOf(compiled.uncertain, slopes);
  const sigma = Math.hypot(spread.sigma, accuracy * nominal, 0.1);
  const centre = nominal + spread.shift;
  return {
    nominal,
    low: Math.max(0, centre - 2 * sigma),
    high: centre + 2 * sigma,
    sigma,
    worstLow: Math.max(0, nominal - spread.worstDown - accuracy * nominal),
    worstHigh: nominal + spread.worstUp + accuracy * nominal,
    contributors: spread.contributors,
  };
}

/** The network with one resistance raised by STEP; undefined when the parameter is no resistance. */
function withChange(network: Network, element: string, parameter: string): Network | undefined {
  if (!/ohms$/i.test(parameter) || parameter === "esrOhms") return undefined;
  const elements = network.elements.map((candidate) => {
    if (candidate.id !== element) return candidate;
    if (candidate.kind === "transformer") {
      const id = parameter.replace(/\.ohms$/, "");
      return { ...candidate, windings: candidate.windings.map((winding) => (winding.id === id ? { ...winding, ohms: winding.ohms * (1 + STEP) } : winding)) };
    }
    const value = (candidate as unknown as Record<string, number>)[parameter];
    return value === undefined ? candidate : { ...candidate, [parameter]: value * (1 + STEP) };
  });
  return { ...network, elements };
}
