import type { Element, Pair } from "./network.ts";

/** Every point an element touches. */
export function elementPoints(element: Element): readonly string[] {
  switch (element.kind) {
    case "transformer":
      return element.windings.flatMap((winding) => winding.nodes);
    case "triode":
      return [element.nodes.plate, element.nodes.grid, element.nodes.cathode];
    case "pentode":
      return [element.nodes.plate, element.nodes.screen, element.nodes.grid, element.nodes.cathode];
    default:
      return element.nodes;
  }
}

/** The pairs of points between which an element can carry a steady current. A control grid is not such a path. */
export function directPaths(element: Element): readonly Pair[] {
  switch (element.kind) {
    case "transformer":
      return element.windings.map((winding) => winding.nodes);
    case "triode":
      return [[element.nodes.plate, element.nodes.cathode]];
    case "pentode":
      return [
        [element.nodes.plate, element.nodes.cathode],
        [element.nodes.screen, element.nodes.cathode],
      ];
    case "current-source":
      return [];
    case "capacitor":
      return element.leakOhms === undefined || !Number.isFinite(element.leakOhms) ? [] : [element.nodes];
    default:
      return [element.nodes];
  }
}

/** Whether the element is there at all: an open switch is not. */
export function isPresent(element: Element): boolean {
  return element.kind !== "switch" || element.closed;
}
