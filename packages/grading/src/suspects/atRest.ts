import { type Network, resting } from "@underchassis/calc";
import type { CompiledNetwork } from "../model/index.ts";

/** A leakage below this is a short, which an ohmmeter's volt sees as well as any voltage does. */
export const SEEN_LEAK_OHMS = 1e5;

/** The network as an ohmmeter finds it: a capacitor's leakage at its working voltage hardly shows at a volt. */
export function atRest(network: Network): Network {
  const elements = network.elements.map((element) => {
    if (element.kind !== "capacitor" || element.leakOhms === undefined || element.leakOhms < SEEN_LEAK_OHMS) return element;
    const { leakOhms: _leak, ...tight } = element;
    return tight;
  });
  return { ...network, elements };
}

/** The resistance at rest behind each uncertain value of a chassis; undefined where an ohmmeter does not see it. */
export function restingOf(compiled: CompiledNetwork, network: Network): (ReturnType<typeof resting>[number] | undefined)[] {
  const byId = new Map(network.elements.flatMap(resting).map((part) => [part.id, part]));
  return compiled.uncertain.map(({ ref: { element, parameter } }) => {
    if (!/ohms$/i.test(parameter) || parameter === "esrOhms" || parameter === "reverseOhms") return undefined;
    return byId.get(parameter.endsWith(".ohms") ? `${element}.${parameter.slice(0, -".ohms".length)}` : element);
  });
}
