import type { Element, Network } from "./network.ts";
import { DEFAULT_TEST_VOLTS, type OhmmeterOptions, ohmmeter, resting, thresholds } from "./ohmmeter.ts";
import { factorizeSmall, solveSmall } from "./small-lu.ts";
import { CircuitError } from "./solution.ts";
import { validateNetwork } from "./validate-network.ts";

/** Ohmmeter readings of networks that differ from a base in a few elements. */
export interface OhmsFamily {
  /** Readings of the base, one for each pair, in ohms. */
  base: readonly number[];
  /**
   * Readings of a changed network, one for each pair, in ohms; `Infinity` where there is no path. Elements that are the same object as in the
   * base count as untouched.
   *
   * @throws CircuitError as `ohmmeter`
   */
  ohms(changed: Network): number[];
}

/** A change of one conductance between two points of the base. */
interface Branch {
  plus: number;
  minus: number;
  siemens: number;
}

/**
 * Predicts what an ohmmeter shows between given pairs of points, power off, for many networks that differ from a base in a few elements.
 * Where no junction can be turned on, the conductances of the base are inverted once and each change is a correction of that inverse by as
 * many ranks as elements differ (Woodbury's identity); pairs whose two points a changed network no longer joins, networks with new points,
 * and those with junctions near the meter are read by `ohmmeter` itself.
 *
 * @param pairs points between which the meter lies, the first on its positive lead
 * @param options as of `ohmmeter`
 * @throws CircuitError as `ohmmeter`
 */
export function ohmsFamily(base: Network, pairs: readonly (readonly [string, string])[], options: OhmmeterOptions = {}): OhmsFamily {
  validateNetwork(base);
  const { testVolts = DEFAULT_TEST_VOLTS } = options;
  const grid = new ConductanceGrid(base, testVolts);
  const reading = (network: Network): number[] => pairs.map(([from, to]) => ohmmeter(network, from, to, options).ohms);
  const baseOhms = reading(base);
  const baseElements = new Map(base.elements.map((element) => [element.id, element]));
  return {
    base: baseOhms,
    ohms(changed) {
      const { fresh, gone } = difference(baseElements, changed);
      if (fresh.length === 0 && gone.length === 0) return [...baseOhms];
      validateNetwork({ reference: changed.reference, elements: fresh });
      const branches = [
        ...gone.flatMap((element) => grid.branches(element, -1) ?? []),
        ...fresh.flatMap((element) => grid.branches(element, 1) ?? []),
      ];
      const placed = fresh.every((element) => grid.branches(element, 1) !== undefined);
      const update = placed ? grid.update(branches) : undefined;
      const touchesJunction = [...fresh, ...gone].some((element) => mayConduct(element, testVolts));
      return pairs.map(([from, to]) => {
        const quick =
          update === undefined || touchesJunction || grid.nearJunction(from, to, branches) ? undefined : grid.between(from, to, update);
        return quick ?? ohmmeter(changed, from, to, options).ohms;
      });
    },
  };
}

function difference(before: ReadonlyMap<string, Element>, network: Network): { fresh: Element[]; gone: Element[] } {
  const fresh: Element[] = [];
  const gone: Element[] = [];
  const seen = new Set<string>();
  for (const element of network.elements) {
    if (seen.has(element.id)) throw new CircuitError("bad-value", `two elements are called ${element.id}`, [], [element.id]);
    seen.add(element.id);
    const old = before.get(element.id);
    if (old === element) continue;
    fresh.push(element);
    if (old !== undefined) gone.push(old);
  }
  for (const element of before.values()) if (!seen.has(element.id)) gone.push(element);
  return { fresh, gone };
}

/** Whether a junction may carry current at the meter's voltage: across its knee, or in reverse beside its leakage. */
function mayConduct(element: Element, testVolts: number): boolean {
  const knee = thresholds(element);
  if (knee === undefined) return false;
  return testVolts >= Math.min(knee.forward, knee.backward) || ("reverseOhms" in element && element.reverseOhms !== undefined);
}

/** Conductance in siemens that holds one point of each joined part; no current of a reading passes it. */
const ANCHOR_SIEMENS = 1;

/** The conductances of a network at rest, inverted one joined part at a time: each part has a point of its own at zero volts. */
class ConductanceGrid {
  private readonly index = new Map<string, number>();
  private readonly part: Int32Array;
  private readonly inverse: Float64Array;
  private readonly size: number;
  /** Parts of the network that a junction touches. */
  private readonly withJunction = new Set<number>();

  constructor(base: Network, testVolts: number) {
    const branches: { nodes: readonly [string, string]; siemens: number }[] = [];
    const point = (name: string): number => {
      let at = this.index.get(name);
      if (at === undefined) {
        at = this.index.size;
        this.index.set(name, at);
      }
      return at;
    };
    for (const element of base.elements) for (const { nodes, ohms } of resting(element)) branches.push({ nodes, siemens: 1 / ohms });
    for (const { nodes } of branches) for (const name of nodes) point(name);
    const size = this.index.size;
    this.size = size;
    this.part = Int32Array.from({ length: size }, (_, k) => k);
    for (const { nodes } of branches) this.join(point(nodes[0]), point(nodes[1]));
    for (let k = 0; k < size; k++) this.part[k] = this.root(k);
    for (const element of base.elements) {
      if (!mayConduct(element, testVolts) || !("nodes" in element)) continue;
      for (const name of element.nodes as readonly string[]) {
        const at = this.index.get(name);
        if (at !== undefined) this.withJunction.add(this.part[at]!);
      }
    }
    const matrix = new Float64Array(size * size);
    for (const { nodes, siemens } of branches) addBranch(matrix, size, point(nodes[0]), point(nodes[1]), siemens);
    for (let k = 0; k < size; k++) if (this.part[k] === k) matrix[k * size + k] = matrix[k * size + k]! + ANCHOR_SIEMENS;
    const inverse = new Float64Array(size * size);
    for (let k = 0; k < size; k++) inverse[k * size + k] = 1;
    const pivots = new Int32Array(size);
    factorizeSmall(size, matrix, pivots);
    solveSmall(size, matrix, pivots, inverse, size);
    this.inverse = inverse;
  }

  private root(at: number): number {
    let root = at;
    while (this.part[root] !== root) root = this.part[root]!;
    return root;
  }

  private join(a: number, b: number): void {
    const [from, to] = [this.root(a), this.root(b)];
    if (from !== to) this.part[to] = from;
  }

  /** Conductances of an element between points of the base, times a sign; undefined when it touches a point that the base does not have. */
  branches(element: Element, sign: 1 | -1): Branch[] | undefined {
    const branches: Branch[] = [];
    for (const { nodes, ohms } of resting(element)) {
      const [plus, minus] = [this.index.get(nodes[0]), this.index.get(nodes[1])];
      if (plus === undefined || minus === undefined) return undefined;
      if (plus !== minus) branches.push({ plus, minus, siemens: sign / ohms });
    }
    return branches;
  }

  /** Whether a junction lies in the part of either point, or in one that the change joins to it. */
  nearJunction(from: string, to: string, branches: readonly Branch[]): boolean {
    if (this.withJunction.size === 0) return false;
    const parts = new Set<number>();
    for (const name of [from, to]) {
      const at = this.index.get(name);
      if (at !== undefined) parts.add(this.part[at]!);
    }
    for (const { plus, minus } of branches) {
      parts.add(this.part[plus]!);
      parts.add(this.part[minus]!);
    }
    for (const part of parts) if (this.withJunction.has(part)) return true;
    return false;
  }

  /** Correction of the inverse for a few branches; undefined when they cut the network, or all but cut it. */
  update(branches: readonly Branch[]): { branches: readonly Branch[]; gains: Float64Array } | undefined {
    const merged = merge(branches);
    const k = merged.length;
    const matrix = new Float64Array(k * k);
    const gains = new Float64Array(k * k);
    for (let i = 0; i < k; i++) {
      const a = merged[i]!;
      if (this.part[a.plus] !== this.part[a.minus]) return undefined;
      gains[i * k + i] = a.siemens;
      for (let j = 0; j < k; j++) {
        const b = merged[j]!;
        matrix[i * k + j] = (i === j ? 1 : 0) + a.siemens * this.mutual(a.plus, a.minus, b.plus, b.minus);
      }
      // What is taken out was nearly all that joined its two points: too few digits would be left.
      if (a.siemens < 0 && matrix[i * k + i]! < LEAST_LEFT) return undefined;
    }
    const pivots = new Int32Array(k);
    if (k > 0 && !factorizeSmall(k, matrix, pivots)) return undefined;
    for (let i = 0; i < k; i++) if (!(Math.abs(matrix[i * k + i]!) > LEAST_LEFT)) return undefined;
    if (k > 0) solveSmall(k, matrix, pivots, gains, k);
    return { branches: merged, gains };
  }

  /** Volts between one pair of points for an ampere into another. */
  private mutual(plus: number, minus: number, otherPlus: number, otherMinus: number): number {
    const { inverse, size } = this;
    const high = inverse[plus * size + otherPlus]! - inverse[plus * size + otherMinus]!;
    return high - (inverse[minus * size + otherPlus]! - inverse[minus * size + otherMinus]!);
  }

  /** Reading between two points in ohms; undefined when the base does not join them. */
  between(from: string, to: string, { branches, gains }: { branches: readonly Branch[]; gains: Float64Array }): number | undefined {
    const [plus, minus] = [this.index.get(from), this.index.get(to)];
    if (plus === undefined || minus === undefined || this.part[plus] !== this.part[minus]) return undefined;
    if (plus === minus) return undefined;
    const across = branches.map((branch) => this.mutual(branch.plus, branch.minus, plus, minus));
    const own = this.mutual(plus, minus, plus, minus);
    let ohms = own;
    const k = branches.length;
    for (let i = 0; i < k; i++) for (let j = 0; j < k; j++) ohms -= across[i]! * gains[i * k + j]! * across[j]!;
    return ohms > LEAST_LEFT * own ? ohms : undefined;
  }
}

/** Share of a figure that must be left after a correction; below it the base's rounding shows. */
const LEAST_LEFT = 1e-5;

/** Branches between the same two points are one. */
function merge(branches: readonly Branch[]): Branch[] {
  const merged = new Map<string, Branch>();
  for (const { plus, minus, siemens } of branches) {
    const [low, high] = plus < minus ? [plus, minus] : [minus, plus];
    const key = `${low} ${high}`;
    merged.set(key, { plus: low, minus: high, siemens: (merged.get(key)?.siemens ?? 0) + siemens });
  }
  return [...merged.values()].filter(({ siemens }) => siemens !== 0);
}

function addBranch(matrix: Float64Array, size: number, a: number, b: number, siemens: number): void {
  if (a === b) return;
  matrix[a * size + a] = matrix[a * size + a]! + siemens;
  matrix[b * size + b] = matrix[b * size + b]! + siemens;
  matrix[a * size + b] = matrix[a * size + b]! - siemens;
  matrix[b * size + a] = matrix[b * size + a]! - siemens;
}
