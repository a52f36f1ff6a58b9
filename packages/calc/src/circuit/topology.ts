import { directPaths, elementPoints, isPresent } from "./element-points.ts";
import type { Element, Network } from "./network.ts";
import { CircuitError } from "./solution.ts";

/** Sets of points joined pairwise (union-find). */
class Joined {
  private readonly parent = new Map<string, string>();

  find(point: string): string {
    let root = point;
    for (let up = this.parent.get(root); up !== undefined && up !== root; up = this.parent.get(root)) root = up;
    this.parent.set(point, root);
    return root;
  }

  /** Joins two points; false when they were joined already. */
  join(a: string, b: string): boolean {
    const rootA = this.find(a);
    const rootB = this.find(b);
    if (rootA === rootB) return false;
    this.parent.set(rootB, rootA);
    return true;
  }
}

/**
 * The groups of points that no element ties to the reference with a path for steady current.
 *
 * @returns one list of points a group; empty when every point has such a path
 */
export function floatingIslands(network: Network): string[][] {
  const joined = new Joined();
  const points = new Set<string>();
  for (const element of network.elements) {
    if (!isPresent(element)) continue;
    for (const point of elementPoints(element)) points.add(point);
    for (const [a, b] of directPaths(element)) joined.join(a, b);
  }
  const home = joined.find(network.reference);
  const islands = new Map<string, string[]>();
  for (const point of points) {
    const root = joined.find(point);
    if (root === home) continue;
    const island = islands.get(root);
    if (island === undefined) islands.set(root, [point]);
    else island.push(point);
  }
  return [...islands.values()];
}

/** @throws CircuitError `floating-point` naming the points that have no path to the reference and what touches them */
export function refuseFloating(network: Network, islands: readonly (readonly string[])[]): void {
  if (islands.length === 0) return;
  const points = islands.flat();
  const lost = new Set(points);
  const elements = network.elements.filter((element) => isPresent(element) && elementPoints(element).some((point) => lost.has(point)));
  const names = elements.map((element) => element.id);
  throw new CircuitError(
    "floating-point",
    `no path for steady current from ${points.join(", ")} to ${network.reference} (touched by ${names.join(", ")})`,
    points,
    names,
  );
}

function isRigid(element: Element, constant: boolean): boolean {
  if (element.kind === "voltage-source") return true;
  return constant && element.kind === "inductor" && element.swing === undefined && (element.dcrOhms ?? 0) === 0;
}

/**
 * Looks for a loop in which nothing limits the current: voltage sources alone and, for a constant operating point, coils
 * without resistance.
 *
 * @throws CircuitError `source-loop` naming the elements of the rigid tree that the last one closes
 */
export function refuseSourceLoops(network: Network, constant: boolean): void {
  const joined = new Joined();
  const rigid = network.elements.filter((element) => isRigid(element, constant));
  for (const element of rigid) {
    const [a, b] = elementPoints(element) as [string, string];
    if (joined.join(a, b)) continue;
    const root = joined.find(a);
    const ring = rigid.filter((other) => joined.find(elementPoints(other)[0]!) === root).map((other) => other.id);
    throw new CircuitError("source-loop", `nothing limits the current in a loop through ${ring.join(", ")}`, [a, b], ring);
  }
}
