import type { Element } from "@underchassis/calc";

/** Resistance of the tie that gives a winding without a path to the reference a defined potential; its leakage in real life. */
export const TIE_OHMS = 1e8;

/** Pairs of points between which direct current can flow. */
function conductingPairs(element: Element): readonly (readonly [string, string])[] {
  switch (element.kind) {
    case "capacitor":
      return element.leakOhms === undefined ? [] : [element.nodes];
    case "current-source":
      return [];
    case "switch":
      return element.closed ? [element.nodes] : [];
    case "transformer":
      return element.windings.map((winding) => winding.nodes);
    case "triode":
      return [
        [element.nodes.plate, element.nodes.cathode],
        [element.nodes.grid, element.nodes.cathode],
      ];
    case "pentode":
      return [
        [element.nodes.plate, element.nodes.cathode],
        [element.nodes.screen, element.nodes.cathode],
        [element.nodes.grid, element.nodes.cathode],
      ];
    default:
      return [element.nodes];
  }
}

/**
 * Points to tie to the reference: one for each part of the network that is coupled to the rest only through a transformer's
 * core (the line side of a set with a transformer, a heater winding that nobody grounded). Other floating parts of a network
 * are wiring errors and stay as they are, for the solver to name.
 */
export function floatingWindings(elements: readonly Element[], reference: string): string[] {
  const parent = new Map<string, string>();
  const find = (point: string): string => {
    let name = point;
    for (let up = parent.get(name); up !== undefined; up = parent.get(name)) name = up;
    return name;
  };
  for (const element of elements) {
    for (const [a, b] of conductingPairs(element)) {
      const [first, second] = [find(a), find(b)];
      if (first !== second) parent.set(second, first);
    }
  }
  const ties = new Map<string, string>();
  for (const element of elements) {
    if (element.kind !== "transformer" && !(element.kind === "voltage-source" && (element.rmsVolts ?? 0) > 0)) continue;
    const points = element.kind === "transformer" ? element.windings.map((winding) => winding.nodes[1]) : [element.nodes[1]];
    for (const point of points) {
      const island = find(point);
      if (island !== find(reference) && !ties.has(island)) ties.set(island, point);
    }
  }
  return [...ties.values()];
}
