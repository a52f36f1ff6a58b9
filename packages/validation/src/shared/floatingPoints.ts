import type { Network } from "@underchassis/calc";

/**
 * Points of a network from which no direct current can flow to the reference nor to a source or winding, and whose voltage matters to a
 * tube, rectifier, resistor or load. Capacitors count as open, and so does a grid: its current is nothing to stand on. Coils and capacitors
 * among themselves (a tuned circuit behind its padder) may float.
 */
export function floatingPoints({ elements, reference }: Network): ReadonlySet<string> {
  const parent = new Map<string, string>();
  const find = (point: string): string => {
    let name = point;
    for (let up = parent.get(name); up !== undefined; up = parent.get(name)) name = up;
    return name;
  };
  const join = (points: readonly string[]): void => {
    const [first, ...others] = points.map(find);
    for (const other of others) if (first !== undefined && find(other) !== find(first)) parent.set(find(other), find(first));
  };
  const points = new Set<string>([reference]);
  const held = new Set<string>([reference]);
  const minding = new Set<string>();
  for (const element of elements) {
    if (element.kind === "transformer") {
      for (const { nodes } of element.windings) {
        join(nodes);
        for (const point of nodes) points.add(point);
        // A winding hangs on its core, and the compiler ties it.
        held.add(nodes[0]);
      }
      continue;
    }
    const nodes = Object.values(element.nodes) as string[];
    for (const point of nodes) points.add(point);
    if (element.kind !== "capacitor" && element.kind !== "inductor" && element.kind !== "switch")
      for (const point of nodes) minding.add(point);
    if (element.kind === "capacitor" || element.kind === "current-source" || (element.kind === "switch" && !element.closed)) continue;
    join(element.kind === "triode" || element.kind === "pentode" ? electrodes(element.nodes) : nodes);
    if (element.kind === "voltage-source") held.add(nodes[0] ?? reference);
  }
  const islands = new Set([...held].map(find));
  const minded = new Set([...minding].map(find));
  return new Set([...points].filter((point) => !islands.has(find(point)) && minded.has(find(point))));
}

/** What cathode current flows through. */
function electrodes({ plate, screen, cathode }: { plate: string; screen?: string; cathode: string }): string[] {
  return [plate, cathode, ...(screen === undefined ? [] : [screen])];
}
