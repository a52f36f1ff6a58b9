import type { Network, ParameterRef } from "@underchassis/calc";

/**
 * The network as an ohmmeter finds it: a capacitor's leakage at its working voltage hardly shows at a volt.
 *
 * @param seenOhms a leakage below this is a short, which an ohmmeter sees as well as any voltage does
 */
export function withoutLeakage(network: Network, seenOhms: number): Network {
  const elements = network.elements.map((element) => {
    if (element.kind !== "capacitor" || element.leakOhms === undefined || element.leakOhms < seenOhms) return element;
    const { leakOhms: _leak, ...tight } = element;
    return tight;
  });
  return { ...network, elements };
}

/** Whether a parameter is a resistance that an ohmmeter's current can pass. */
export const isOhmic = (parameter: string): boolean => /ohms$/i.test(parameter) && parameter !== "esrOhms";

/** Name of the resistance at rest that a parameter stands for: an element's own, a winding's, a diode's in reverse. */
export function restingId({ element, parameter }: ParameterRef): string {
  if (parameter === "reverseOhms") return `${element} reverse`;
  return parameter.endsWith(".ohms") ? `${element}.${parameter.slice(0, -".ohms".length)}` : element;
}
