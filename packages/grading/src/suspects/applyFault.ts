import type { Element, Network, Pair, Winding } from "@underchassis/calc";
import type { Fault } from "./fault.ts";

/** Resistance of a short or a solder bridge in ohms. common-practice: what a meter shows as none. */
const SHORT_OHMS = 0.1;

/** Splits `T1.hv-1` into the transformer and its winding; a plain element has no winding. */
function windingOf(network: Network, id: string): { element: string; winding?: string } {
  if (network.elements.some((element) => element.id === id)) return { element: id };
  const owner = network.elements.find((element) => element.kind === "transformer" && id.startsWith(`${element.id}.`));
  return owner === undefined ? { element: id } : { element: owner.id, winding: id.slice(owner.id.length + 1) };
}

/**
 * The network with one fault in it: an edit of the graph, sharing every element that the fault does not touch.
 *
 * @returns undefined where the fault cannot be in this network: its part is not there in this condition
 */
export function applyFault(network: Network, fault: Fault): Network | undefined {
  if (fault.also === undefined) return applyOne(network, fault);
  let changed: Network | undefined;
  for (const element of [fault.element, ...fault.also]) changed = applyOne(changed ?? network, { ...fault, element }) ?? changed;
  return changed;
}

function applyOne(network: Network, fault: Fault): Network | undefined {
  if (fault.kind === "bridge") {
    if (fault.to === undefined || fault.part === fault.to) return undefined;
    return {
      ...network,
      elements: [
        ...network.elements,
        resistor(`bridge ${fault.part} ${fault.to}`, [fault.part, fault.to], Math.max(fault.value ?? 0, SHORT_OHMS)),
      ],
    };
  }
  const { element: id, winding } = windingOf(network, fault.element);
  const index = network.elements.findIndex((element) => element.id === id);
  const element = network.elements[index];
  if (element === undefined) return undefined;
  const edited = winding === undefined ? editElement(network, element, fault) : editWinding(element, winding, fault, network.reference);
  if (edited === undefined) return undefined;
  const elements = [...network.elements];
  elements.splice(index, 1, ...edited);
  if (fault.kind === "exchanged" && fault.with !== undefined) {
    const other = elements.findIndex((candidate) => candidate.id === fault.with);
    const swapped = elements[other] === undefined ? undefined : takeValue(elements[other], element);
    if (swapped === undefined) return undefined;
    elements[other] = swapped;
  }
  return { ...network, elements };
}

function resistor(id: string, nodes: Pair, ohms: number): Element {
  return { kind: "resistor", id, nodes, ohms };
}

/** What stands in the element's place. */
function editElement(network: Network, element: Element, fault: Fault): Element[] | undefined {
  switch (fault.kind) {
    case "open":
    case "dead":
      return [];
    case "short":
      return isPair(element) ? [resistor(element.id, element.nodes, SHORT_OHMS)] : undefined;
    case "reversed":
      return reversed(element);
    case "exchanged": {
      const other = network.elements.find(({ id }) => id === fault.with);
      const taken = other === undefined ? undefined : takeValue(element, other);
      return taken === undefined ? undefined : [taken];
    }
    case "moved-lead":
      return moved(element, fault);
    case "gassy":
      return element.kind === "triode" || element.kind === "pentode"
        ? [element, resistor(`${element.id} gas`, [element.nodes.plate, element.nodes.grid], fault.value ?? 0)]
        : undefined;
    case "electrode-short":
      return electrodes(element, fault);
    default:
      return withValue(element, fault);
  }
}

type PairElement = Extract<Element, { nodes: Pair }>;

function isPair(element: Element): element is PairElement {
  return "nodes" in element && Array.isArray(element.nodes);
}

/** A rectifier or a battery the wrong way round. A capacitor the wrong way round is one that leaks, by the value of its family. */
function reversed(element: Element): Element[] | undefined {
  return isPair(element) ? [{ ...element, nodes: [element.nodes[1], element.nodes[0]] }] : undefined;
}

/** A short of two electrodes, or of one and the heater at its live end. */
function electrodes(element: Element, fault: Fault): Element[] | undefined {
  const nodes = element.kind === "transformer" ? {} : (element.nodes as unknown as Record<string, string>);
  const [first = "", second = ""] = (fault.lead ?? "").split("-");
  const [from, to] = [nodes[first] ?? fault.from, nodes[second] ?? fault.to];
  return from === undefined || to === undefined || from === to
    ? undefined
    : [element, resistor(`${element.id} ${fault.lead}`, [from, to], Math.max(fault.value ?? 0, SHORT_OHMS))];
}

function moved(element: Element, { lead, to }: Fault): Element[] | undefined {
  if (lead === undefined || to === undefined || element.kind === "transformer") return undefined;
  if (Array.isArray(element.nodes)) {
    const nodes: [string, string] = [element.nodes[0], element.nodes[1]];
    nodes[lead === "0" ? 0 : 1] = to;
    // Both leads on one point: the part does nothing there.
    return nodes[0] === nodes[1] ? [] : [{ ...element, nodes } as Element];
  }
  return [{ ...element, nodes: { ...element.nodes, [lead]: to } } as Element];
}

const MAIN_VALUE: Readonly<Partial<Record<Element["kind"], string>>> = {
  resistor: "ohms",
  capacitor: "farads",
  inductor: "henries",
  zener: "zenerVolts",
};

/** The element with the main value (or the model) of another of its kind, in its own place. */
function takeValue(element: Element, other: Element): Element | undefined {
  if (element.kind !== other.kind) return undefined;
  if (element.kind === "transformer") return undefined;
  const key = MAIN_VALUE[element.kind];
  if (key === undefined) return { ...other, id: element.id, nodes: element.nodes } as Element;
  return { ...element, [key]: (other as unknown as Record<string, number>)[key] } as Element;
}

function withValue(element: Element, { parameter, value }: Fault): Element[] | undefined {
  if (parameter === undefined || value === undefined) return undefined;
  if (parameter === "ohms" && isPair(element)) {
    if (value === Number.POSITIVE_INFINITY) return [];
    return [resistor(element.id, element.nodes, Math.max(value, SHORT_OHMS))];
  }
  if (element.kind === "capacitor") {
    if (parameter === "farads" && value === 0) return [];
    if (parameter === "leakOhms") {
      const leakOhms = element.leakOhms === undefined ? value : 1 / (1 / element.leakOhms + 1 / value);
      return [{ ...element, leakOhms: Math.max(leakOhms, SHORT_OHMS) }];
    }
  }
  if (element.kind === "voltage-source" && parameter === "rmsVolts") return [{ ...element, rmsVolts: value }];
  if (element.kind === "vacuum-diode" && parameter === "emission") return [{ ...element, perveance: element.perveance * value }];
  if ((element.kind === "triode" || element.kind === "pentode") && parameter === "emission")
    return [{ ...element, emission: (element.emission ?? 1) * value }];
  return [{ ...element, [parameter]: value } as Element];
}

function editWinding(element: Element, id: string, fault: Fault, reference: string): Element[] | undefined {
  if (element.kind !== "transformer") return undefined;
  const index = element.windings.findIndex((winding) => winding.id === id);
  const winding = element.windings[index];
  if (winding === undefined) return undefined;
  const others = element.windings.filter((candidate) => candidate !== winding);
  switch (fault.kind) {
    case "open":
      // Without its primary, what is left of a transformer is wire.
      return index === 0
        ? others.map((coil) => resistor(`${element.id}.${coil.id}`, coil.nodes, Math.max(coil.ohms, SHORT_OHMS)))
        : [{ ...element, windings: others }];
    case "shorted-turns": {
      // The turns with their ends together are a winding of their own, limited by their own wire; the rest has fewer turns.
      const share = fault.value ?? 0;
      const ring = `${element.id}.${id} turns`;
      const turns: Winding = { id: `${id} turns`, nodes: [ring, reference], turns: winding.turns * share, ohms: winding.ohms * share };
      const rest: Winding = { ...winding, turns: winding.turns * (1 - share), ohms: winding.ohms * (1 - share) };
      const windings = [...element.windings.map((candidate) => (candidate === winding ? rest : candidate)), turns];
      return [{ ...element, windings }, resistor(ring, [ring, reference], 1e-3)];
    }
    case "moved-lead": {
      if (fault.to === undefined) return undefined;
      const nodes: [string, string] = [winding.nodes[0], winding.nodes[1]];
      nodes[fault.lead === "0" ? 0 : 1] = fault.to;
      if (nodes[0] === nodes[1]) return undefined;
      return [{ ...element, windings: element.windings.map((candidate) => (candidate === winding ? { ...winding, nodes } : candidate)) }];
    }
    default:
      return undefined;
  }
}
