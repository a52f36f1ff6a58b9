/** A fault as an edit of the compiled network. Written for the benchmark alone: the search under test has its own. */
import type { Element, Network, Pair } from "@underchassis/calc";
import { scaled } from "../cases/perturb.ts";
import type { SeededFault } from "./seededFault.ts";
import { tubeFault } from "./tubeFaults.ts";
import { shortedTurns, windingOpen } from "./windingFaults.ts";

/** What is left of a part that has failed shorted, or of a blob of solder. common-practice. */
const SHORT_OHMS = 0.5;

type Two = Extract<Element, { nodes: Pair }>;
const isTwo = (element: Element): element is Two => "nodes" in element && Array.isArray(element.nodes);
const wire = (id: string, nodes: Pair, ohms: number): Element => ({ kind: "resistor", id, nodes, ohms });

/** Elements that are the part's own (not its heater). */
export function ownElements(network: Network, part: string): Element[] {
  return network.elements.filter(({ id }) => id === part || (id.startsWith(`${part}/`) && !id.endsWith("/heater")));
}

const sectionOf = (element: Element): string => element.id.split("/")[1] ?? "";

/** The parameter that a part is bought by. */
function mainParameter(element: Element): string {
  switch (element.kind) {
    case "capacitor":
      return "farads";
    case "inductor":
      return "henries";
    case "vacuum-diode":
      return "perveance";
    case "triode":
    case "pentode":
      return "emission";
    case "voltage-source":
      return "rmsVolts";
    default:
      return "ohms";
  }
}

const mainValue = (element: Element): number => (element as unknown as Record<string, number>)[mainParameter(element)] ?? Number.NaN;

/** The edited element or elements; undefined: as before. */
function edit(element: Element, fault: SeededFault, network: Network): Element[] | undefined {
  const { kind, factor = 1, ohms = 0, lead, to } = fault;
  if (element.kind === "transformer") {
    if (kind === "open") return [windingOpen(element, lead ?? "")];
    if (kind === "shorted-turns") return [shortedTurns(element, lead ?? "", factor)];
    return undefined;
  }
  switch (kind) {
    case "open":
      return lead === undefined || lead === sectionOf(element) ? [] : undefined;
    case "short":
      if (!isTwo(element) || (lead !== undefined && lead !== sectionOf(element))) return undefined;
      return [wire(element.id, element.nodes, SHORT_OHMS)];
    case "drift-high":
    case "drift-low":
    case "wrong-value":
    case "lost-capacity":
    case "line-voltage":
      return [scaled(element, mainParameter(element), factor)];
    case "leaky":
      return [element, wire(`${element.id} leak`, (element as Two).nodes, ohms)];
    case "high-esr":
      return element.kind === "capacitor" ? [{ ...element, esrOhms: ohms }] : undefined;
    case "reversed":
      if (!isTwo(element)) return undefined;
      // An electrolytic the wrong way round conducts; a rectifier merely conducts the other way.
      if (element.kind === "capacitor") return [element, wire(`${element.id} leak`, element.nodes, ohms)];
      return [{ ...element, nodes: [element.nodes[1], element.nodes[0]] }];
    case "exchanged": {
      const other = network.elements.find(({ id }) => id === fault.with);
      return other === undefined ? undefined : [scaled(element, mainParameter(element), mainValue(other) / mainValue(element))];
    }
    case "moved-lead": {
      if (to === undefined) return undefined;
      if (isTwo(element)) {
        if (lead === "a" || (lead !== undefined && lead === sectionOf(element))) return [{ ...element, nodes: [to, element.nodes[1]] }];
        return lead === "b" ? [{ ...element, nodes: [element.nodes[0], to] }] : undefined;
      }
      return [{ ...element, nodes: { ...element.nodes, [lead ?? ""]: to } } as Element];
    }
    default:
      return tubeFault(element, fault, network);
  }
}

/**
 * The network with the fault in it. Works on any condition's network: a part that is not in there changes nothing.
 *
 * @throws Error when the fault does not fit the part
 */
export function applySeededFault(network: Network, fault: SeededFault): Network {
  if (fault.kind === "bridge") {
    if (fault.to === undefined) throw new Error("a bridge has two points");
    return { ...network, elements: [...network.elements, wire("bridge", [fault.part, fault.to], fault.ohms ?? SHORT_OHMS)] };
  }
  const parts = fault.kind === "exchanged" && fault.with !== undefined ? [fault.part, fault.with] : [fault.part];
  const own = new Set(parts.flatMap((part) => ownElements(network, part)));
  const elements = network.elements.flatMap((element) => {
    if (!own.has(element)) return [element];
    const turned = fault.kind === "exchanged" && element.id === fault.with ? { ...fault, with: fault.part } : fault;
    return edit(element, turned, network) ?? [element];
  });
  return { ...network, elements: elements.filter(hasEffect) };
}

/** Both leads on one point: it does nothing. */
function hasEffect(element: Element): boolean {
  return !(isTwo(element) && element.nodes[0] === element.nodes[1]);
}
