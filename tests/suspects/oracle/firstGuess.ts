/** Where the simulator looks for its first instant: the volts of the points, carried on to the nodes behind ammeters and wires. */
import type { NetlistWriter } from "../../engine/oracle/netlist-writer.ts";

const IN_SERIES = /^(?:va|r)\d+ (\S+) (x\d+) \S+$/;
/** Nodes behind a point: ammeter, wire, ammeter. */
const DEPTH = 3;

/** One `.ic` line. */
export function firstGuess(exported: NetlistWriter, points: ReadonlyMap<string, number>): string {
  const volts = new Map<string, number>([["0", 0]]);
  for (const [point, node] of exported.pointNodes) volts.set(node, points.get(point) ?? 0);
  for (let pass = 0; pass < DEPTH; pass += 1) {
    for (const line of exported.lines) {
      const [, from, to] = IN_SERIES.exec(line) ?? [];
      const known = from === undefined ? undefined : volts.get(from);
      if (to !== undefined && known !== undefined && !volts.has(to)) volts.set(to, known);
    }
  }
  volts.delete("0");
  return `.ic ${[...volts].map(([node, value]) => `v(${node})=${value}`).join(" ")}`;
}
