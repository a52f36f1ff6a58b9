/**
 * What an ohmmeter shows in the unplugged chassis, below the voltage that turns a junction on: wires, resistors and leaks. The simulator
 * gets one copy of the network for each reading, a milliampere into each, and gives all of them in one operating point.
 */
import type { Element, Network } from "@underchassis/calc";
import { quickRun } from "./quickRun.ts";

/** Above this the simulator's own shunts are all there is. */
const OPEN_OHMS = 1e9;
const TEST_AMPS = 1e-3;

type Wire = readonly [string, string, number];

function wiresOf(element: Element): Wire[] {
  switch (element.kind) {
    case "resistor":
      return [[...element.nodes, element.ohms]];
    case "switch":
      return element.closed ? [[...element.nodes, element.contactOhms ?? 0.01]] : [];
    case "inductor":
      return [[...element.nodes, element.dcrOhms ?? 1e-3]];
    case "transformer":
      return element.windings.map(({ nodes, ohms }) => [...nodes, ohms] as const);
    case "capacitor":
      return element.leakOhms === undefined ? [] : [[...element.nodes, element.leakOhms + (element.esrOhms ?? 0)]];
    case "filament":
      return [[...element.nodes, element.coldOhms]];
    case "diode":
    case "selenium":
      return element.reverseOhms === undefined ? [] : [[...element.nodes, element.reverseOhms]];
    default:
      return [];
  }
}

/** Points that wires join, by the name of one of them. */
function islandsOf(wires: readonly Wire[]): Map<string, string> {
  const islands = new Map<string, string>();
  for (const [a, b] of wires) {
    const [first, second] = [islands.get(a) ?? a, islands.get(b) ?? b];
    islands.set(a, first);
    islands.set(b, second);
    if (first !== second) for (const [point, island] of islands) if (island === second) islands.set(point, first);
  }
  return islands;
}

/** Ohms between each pair of points; null where there is no path, or no such point. */
export async function coldOhms(network: Network, pairs: readonly (readonly [string, string])[]): Promise<(number | null)[]> {
  const wires = network.elements.flatMap(wiresOf).filter(([a, b, ohms]) => a !== b && ohms > 0);
  const numbers = new Map<string, number>();
  for (const [a, b] of wires) for (const point of [a, b]) if (!numbers.has(point)) numbers.set(point, numbers.size);
  const islands = islandsOf(wires);
  const lines: string[] = [];
  const saved: string[] = [];
  const readable: number[] = [];
  for (const [copy, [from, to]] of pairs.entries()) {
    const [first, second] = [numbers.get(from), numbers.get(to)];
    if (first === undefined || second === undefined || first === second) continue;
    const island = islands.get(to);
    if (island === undefined || island !== islands.get(from)) continue;
    // The second point of a pair is the ground of its copy.
    const node = (point: number): string => (point === second ? "0" : `n${copy}_${point}`);
    for (const [k, [a, b, ohms]] of wires.entries())
      if (islands.get(a) === island) lines.push(`r${copy}_${k} ${node(numbers.get(a) ?? -1)} ${node(numbers.get(b) ?? -1)} ${ohms}`);
    lines.push(`i${copy} 0 ${node(first)} ${TEST_AMPS}`);
    saved.push(`v(${node(first)})`);
    readable.push(copy);
  }
  const result: (number | null)[] = pairs.map(([from, to]) => (from === to ? 0 : null));
  if (readable.length === 0) return result;
  const trace = await quickRun(lines, saved, "reltol=1e-6", ".op");
  if (trace === undefined) throw new Error("the simulator gave no operating point of the unplugged chassis");
  for (const [k, copy] of readable.entries()) {
    const volts = trace.get(saved[k] ?? "")?.[0];
    if (volts === undefined || !Number.isFinite(volts)) throw new Error("the simulator lost a reading of the unplugged chassis");
    const ohms = volts / TEST_AMPS;
    result[copy] = ohms > OPEN_OHMS ? null : ohms;
  }
  return result;
}
