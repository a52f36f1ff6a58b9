/**
 * What a compiled network needs before the simulator can settle it: losses that iron has, the current that a positive grid draws, and a
 * hold for leads that a fault has cut off. None of it moves a mean by a thousandth.
 */
import type { Element, Network } from "@underchassis/calc";

/** A core: with the line's own 60 Hz it takes some milliamperes. common-practice. */
const CORE_HENRIES = 20;
/** Iron and winding capacity: the quality of a choke at twice the line's frequency. common-practice. */
const COIL_QUALITY = 30;
/** Grid current: a junction of 1 nA behind 2 kohm (Koren, Glass Audio 8(5), 1996). */
const GRID = { saturationAmps: 1e-9, emission: 1, ohms: 2000 } as const;
/** A cut-off capacitor lead is held by a resistance that gives this time constant, in seconds: ripple passes, and a meter sees no DC. */
const HOLD_SECONDS = 0.05;
/** A cut-off point that no capacitor reaches is held by a meter's input resistance. */
const HOLD_OHMS = 1e7;

const lossOhms = (henries: number, hertz: number): number => 2 * Math.PI * 2 * hertz * henries * COIL_QUALITY;

function withLosses(element: Element, hertz: number): Element[] {
  if (element.kind === "transformer") {
    const magnetizingHenries = element.magnetizingHenries ?? CORE_HENRIES;
    const [first] = element.windings;
    const loss: Element[] =
      first === undefined
        ? []
        : [{ kind: "resistor", id: `${element.id} loss`, nodes: first.nodes, ohms: lossOhms(magnetizingHenries, hertz) }];
    return [{ ...element, magnetizingHenries }, ...loss];
  }
  if (element.kind === "triode" || element.kind === "pentode") {
    const { grid, cathode } = element.nodes;
    return grid === cathode ? [element] : [element, { kind: "diode", id: `${element.id} grid current`, nodes: [grid, cathode], ...GRID }];
  }
  if (element.kind !== "inductor") return [element];
  const inner = `${element.id} inside`;
  const [a, b] = element.nodes;
  return [
    { kind: "resistor", id: `${element.id} wire`, nodes: [a, inner], ohms: Math.max(element.dcrOhms ?? 0, 1e-3) },
    { ...element, nodes: [inner, b], dcrOhms: 0 },
    { kind: "resistor", id: `${element.id} loss`, nodes: [inner, b], ohms: lossOhms(element.henries, hertz) },
  ];
}

/** Pairs of points between which direct current can flow through an element. */
function directPairs(element: Element): (readonly [string, string])[] {
  switch (element.kind) {
    case "capacitor":
      return element.leakOhms === undefined ? [] : [element.nodes];
    case "current-source":
      return [];
    case "switch":
      return element.closed ? [element.nodes] : [];
    case "transformer":
      return element.windings.map(({ nodes }) => nodes);
    case "triode":
      return [[element.nodes.plate, element.nodes.cathode]];
    case "pentode":
      return [
        [element.nodes.plate, element.nodes.cathode],
        [element.nodes.screen, element.nodes.cathode],
      ];
    default:
      return [element.nodes];
  }
}

export function pointsOf(element: Element): readonly string[] {
  return element.kind === "transformer" ? element.windings.flatMap(({ nodes }) => [...nodes]) : Object.values(element.nodes);
}

/** Sets of points that direct current joins. */
export function directIslands(elements: readonly Element[]): Map<string, string> {
  const parent = new Map<string, string>();
  const find = (point: string): string => {
    let root = point;
    while ((parent.get(root) ?? root) !== root) root = parent.get(root) ?? root;
    return root;
  };
  for (const element of elements) {
    for (const point of pointsOf(element)) if (!parent.has(point)) parent.set(point, point);
    for (const [a, b] of directPairs(element)) parent.set(find(a), find(b));
  }
  return new Map([...parent.keys()].map((point) => [point, find(point)]));
}

/** Sense of a fault that cuts off a grid: nothing defines its voltage. */
export class FloatingGrid extends Error {}

/**
 * The network as the simulator gets it.
 *
 * @throws FloatingGrid when nothing but insulation holds a grid
 */
export function prepare(network: Network, hertz: number): Network {
  const islands = directIslands(network.elements);
  const home = islands.get(network.reference);
  const held = new Map<string, { point: string; farads: number }>();
  for (const element of network.elements) {
    for (const point of pointsOf(element)) {
      const island = islands.get(point);
      if (island === undefined || island === home) continue;
      if ((element.kind === "triode" || element.kind === "pentode") && point === element.nodes.grid)
        throw new FloatingGrid(`${element.id}: only insulation holds the grid`);
      const known = held.get(island) ?? { point, farads: 0 };
      held.set(island, { point: known.point, farads: known.farads + (element.kind === "capacitor" ? element.farads : 0) });
    }
  }
  const holds: Element[] = [...held.values()].map(({ point, farads }) => ({
    kind: "resistor",
    id: `hold ${point}`,
    nodes: [point, network.reference],
    ohms: farads > 0 ? Math.min(HOLD_OHMS, HOLD_SECONDS / farads) : HOLD_OHMS,
  }));
  return { ...network, elements: [...network.elements.flatMap((element) => withLosses(element, hertz)), ...holds] };
}
