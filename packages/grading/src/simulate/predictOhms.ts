import type { Network, ohmmeterSlopes as ohmmeterOf } from "@underchassis/calc";
import type { CompiledNetwork, Prediction } from "../model/index.ts";
import { isOhmic, restingId, withoutLeakage } from "./restingNetwork.ts";
import { spreadOf } from "./spread.ts";

/** Relative step of the differences; networks of resistors are smooth. */
const STEP = 1e-4;

/** Leads and contacts of an ohmmeter. common-practice. */
const LEAD_OHMS = 0.1;
/** Above this a reading counts as open. common-practice: the top range of a digital multimeter. */
const OPEN_OHMS = 20e6;
/** A leakage below this is a short, which an ohmmeter sees as well as any voltage does. */
const SHORT_OHMS = 1e4;

/**
 * What an ohmmeter shows between two points with the power off, parallel paths included, and its window.
 * The slopes over each uncertain resistance come with the reading; where a rectifier conducts, from differences.
 *
 * A capacitor's leakage is known at its working voltage; at an ohmmeter's volt it may leak as much, or hardly at all. The window
 * spans both, and the nominal value is the one without.
 */
export function predictOhms(
  compiled: CompiledNetwork,
  at: string,
  to: string,
  accuracy: number,
  ohmmeter: typeof ohmmeterOf,
): Prediction | undefined {
  const [from, other] = [compiled.pointOf(at), compiled.pointOf(to)];
  if (from === undefined || other === undefined) return undefined;
  const tight = withoutLeakage(compiled.network, SHORT_OHMS);
  const reading = ohmmeter(tight, from, other, {});
  const nominal = reading.ohms;
  const leaking = ohmmeter(compiled.network, from, other, {}).ohms;
  if (!Number.isFinite(nominal)) {
    const low = Math.min(OPEN_OHMS, leaking / 2);
    return { nominal, low, high: nominal, sigma: Number.POSITIVE_INFINITY, worstLow: low, worstHigh: nominal, contributors: [] };
  }
  const exact = reading.junctionsOn.length === 0 ? reading.slopes() : undefined;
  const slopes = compiled.uncertain.map(({ ref }) => {
    if (exact !== undefined) return isOhmic(ref.parameter) ? (exact.get(restingId(ref)) ?? 0) : 0;
    const changed = withChange(tight, ref.element, ref.parameter);
    return changed === undefined ? 0 : (ohmmeter(changed, from, other, {}).ohms - nominal) / STEP;
  });
  const spread = spreadOf(compiled.uncertain, slopes);
  const sigma = Math.hypot(spread.sigma, accuracy * nominal, LEAD_OHMS);
  const centre = nominal + spread.shift;
  const drawn = nominal - leaking;
  return {
    nominal,
    low: Math.max(0, centre - drawn - 2 * sigma),
    high: centre + 2 * sigma,
    sigma,
    worstLow: Math.max(0, nominal - drawn - spread.worstDown - accuracy * nominal),
    worstHigh: nominal + spread.worstUp + accuracy * nominal,
    contributors: spread.contributors,
  };
}

/** The network with one resistance raised by STEP; undefined when the parameter is no resistance. */
function withChange(network: Network, element: string, parameter: string): Network | undefined {
  if (!isOhmic(parameter)) return undefined;
  const elements = network.elements.map((candidate) => {
    if (candidate.id !== element) return candidate;
    if (candidate.kind === "transformer") {
      const id = parameter.replace(/\.ohms$/, "");
      return {
        ...candidate,
        windings: candidate.windings.map((winding) => (winding.id === id ? { ...winding, ohms: winding.ohms * (1 + STEP) } : winding)),
      };
    }
    const value = (candidate as unknown as Record<string, number>)[parameter];
    return value === undefined ? candidate : { ...candidate, [parameter]: value * (1 + STEP) };
  });
  return { ...network, elements };
}
