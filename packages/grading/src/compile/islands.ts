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

/** For each point the name of the part of the network that direct current can reach from it. */
function dcIslands(elements: readonly Element[]): (point: string) => string {
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
  return find;
}

/** Capacitors with a lead on a point that no direct current reaches: only their leakage decides its voltage. */
export function stackedCapacitors(elements: readonly Element[], reference: string): string[] {
  const find = dcIslands(elements);
  const anchored = new Set([find(reference)]);
  for (const element of elements) {
    if (element.kind === "transformer") for (const { nodes } of element.windings) anchored.add(find(nodes[0]));
    if (element.kind === "voltage-source") anchored.add(find(element.nodes[0]));
  }
  const touching = new Map<string, Set<string>>();
  for (const element of elements) {
    for (const point of "windings" in element ? [] : (Object.values(element.nodes) as string[])) {
      const island = find(point);
      if (!anchored.has(island)) touching.set(island, (touching.get(island) ?? new Set()).add(element.id));
    }
  }
  return elements.flatMap((element) =>
    element.kind === "capacitor" && element.nodes.some((point) => isStack(elements, touching.get(find(point)))) ? [element.id] : [],
  );
}

/** A floating point held by two capacitors or more, and by nothing else. */
function isStack(elements: readonly Element[], ids: ReadonlySet<string> | undefined): boolean {
  return ids !== undefined && ids.size > 1 && elements.every((element) => !ids.has(element.id) || element.kind === "capacitor");
}

/**
 * Points to tie to the reference: one for each part of the network that is coupled to the rest only through a transformer's
 * core (the line side of a set with a transformer, a heater winding that nobody grounded). Other floating parts of a network
 * are wiring errors and stay as they are, for the solver to name.
 */
export function floatingWindings(elements: readonly Element[], reference: string): string[] {
  const find = dcIslands(elements);
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
