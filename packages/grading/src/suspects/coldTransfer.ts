import { elementPoints, type Network, resting } from "@underchassis/calc";
import { invertSymmetric } from "./symmetric.ts";

/** What holds a point to the reference when nothing else does: insulation, in ohms. */
const INSULATION_OHMS = 1e9;

/** Every point of a network but its reference, numbered. */
export function pointIndex(network: Network): ReadonlyMap<string, number> {
  const index = new Map<string, number>();
  const add = (point: string) => {
    if (point !== network.reference && !index.has(point)) index.set(point, index.size);
  };
  for (const point of network.elements.flatMap(elementPoints)) add(point);
  return index;
}

/**
 * Response of a chassis at rest: volts at every point for one ampere into every other, in ohms. The inverse of its conductance matrix,
 * insulation included; no junction conducts, as with a meter that tests below their knees.
 */
export function coldTransfer(network: Network, index: ReadonlyMap<string, number>): Float64Array {
  const n = index.size;
  const matrix = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1) matrix[i * n + i] = 1 / INSULATION_OHMS;
  for (const { nodes, ohms } of network.elements.flatMap(resting)) {
    const [a, b] = [index.get(nodes[0]), index.get(nodes[1])];
    if (a !== undefined) matrix[a * n + a] = matrix[a * n + a]! + 1 / ohms;
    if (b !== undefined) matrix[b * n + b] = matrix[b * n + b]! + 1 / ohms;
    if (a === undefined || b === undefined) continue;
    matrix[a * n + b] = matrix[a * n + b]! - 1 / ohms;
    matrix[b * n + a] = matrix[b * n + a]! - 1 / ohms;
  }
  return invertSymmetric(matrix, n).inverse;
}

/** What a meter shows of it: what only insulation joins is open. */
const shownOhms = (ohms: number): number => (ohms > INSULATION_OHMS / 20 ? Number.POSITIVE_INFINITY : Math.max(0, ohms));

/** Ohms between two points from the response; open where nothing is left of either. */
export function ohmsOf(network: Network, index: ReadonlyMap<string, number>, transfer: Float64Array, from: string, to: string): number {
  const [a, b] = [index.get(from), index.get(to)];
  if (from === to) return 0;
  if ((a === undefined && from !== network.reference) || (b === undefined && to !== network.reference)) return Number.POSITIVE_INFINITY;
  const n = index.size;
  const z = (i: number | undefined, j: number | undefined) => (i === undefined || j === undefined ? 0 : transfer[i * n + j]!);
  return shownOhms(z(a, a) - 2 * z(a, b) + z(b, b));
}

/** Volts across two points for one ampere through two others. */
export function shareOf(
  index: ReadonlyMap<string, number>,
  transfer: Float64Array,
  from: string,
  to: string,
  [a, b]: readonly [string, string],
): number {
  const n = index.size;
  const z = (i: number | undefined, j: number | undefined) => (i === undefined || j === undefined ? 0 : transfer[i * n + j]!);
  const [f, t, p, q] = [index.get(from), index.get(to), index.get(a), index.get(b)];
  return z(p, f) - z(p, t) - z(q, f) + z(q, t);
}
