import { type Network, resting } from "@underchassis/calc";
import type { CompiledNetwork } from "../model/index.ts";
import { isOhmic, restingId, withoutLeakage } from "../simulate/restingNetwork.ts";

/** A leakage below this is a short, which an ohmmeter's volt sees as well as any voltage does. */
const SEEN_LEAK_OHMS = 1e5;

/** The network as an ohmmeter finds it. */
export const atRest = (network: Network): Network => withoutLeakage(network, SEEN_LEAK_OHMS);

/** The resistance at rest behind each uncertain value of a chassis; undefined where an ohmmeter does not see it. */
export function restingOf(compiled: CompiledNetwork, network: Network): (ReturnType<typeof resting>[number] | undefined)[] {
  const byId = new Map(network.elements.flatMap(resting).map((part) => [part.id, part]));
  return compiled.uncertain.map(({ ref }) =>
    isOhmic(ref.parameter) && ref.parameter !== "reverseOhms" ? byId.get(restingId(ref)) : undefined,
  );
}
