import { makeDevice } from "./devices/make-device.ts";
import { type PortDevice, portScratch } from "./devices/port-device.ts";
import { elementPoints, isPresent } from "./element-points.ts";
import type { Element, Network, Pair } from "./network.ts";
import { transferOhms } from "./sensitivities.ts";
import { factorizeSmall, solveSmall } from "./small-lu.ts";
import type { SteadyState } from "./solution.ts";

/** Mean volts of networks that differ from a solved one, rectifiers taken as straight. */
export interface MeanResponse {
  /** Points in the order of the volts. */
  readonly points: ReadonlyMap<string, number>;
  /** Mean volts of the base against its reference, in the order of the points. */
  readonly volts: Float64Array;
  /**
   * Mean volts of a changed network. Elements that are the same object as in the base are untouched; resistors, steady leaks and
   * coils' wire may change, come, go and move, and so may tubes, whose whole curves are followed, and capacitors that carry next to no
   * alternating current.
   *
   * @returns undefined where the change is of another kind (rectifiers, transformers, sources, reservoir capacitors, new points), touches a
   * point whose voltage alternates, or leads nowhere
   */
  changed(network: Network): Float64Array | undefined;
}

const PASSES = 40;
const DAMPED_FROM = 6;
const DAMPED_SHARE = 0.5;
/** Share of a port voltage, and volts, at which it counts as found. */
const FOUND_SHARE = 1e-3;
const FOUND_VOLTS = 1e-3;
/** A point counts as alternating above so many RMS volts and this share of its mean: what is tied to it may rectify. */
const STILL_VOLTS = 1;
const STILL_SHARE = 0.1;
/** A capacitor with less alternating current than this, in amperes, leaves mean voltages as they are. */
const STILL_AMPS = 1e-3;
/** Least resistance in ohms of a branch that is put in. */
const LEAST_OHMS = 1e-3;

/** A tube or a resistance whose current adds to what the base's linear response knows. */
interface Group {
  /** Indices of the points of its ports; -1 is the reference. */
  plus: readonly number[];
  minus: readonly number[];
  /** Writes currents and slopes [row][column] at the port voltages. */
  evaluate(volts: Float64Array, amps: Float64Array, slopes: Float64Array): void;
}

/**
 * The response of a powered network's mean voltages to direct currents put into any of its points, about its steady state, and with it the
 * mean voltages of networks that differ from it in resistances and tubes: a change is a few port currents (Woodbury's identity), found
 * by Newton's method with the tubes' whole curves. Rectifiers follow their tangent, so that the answer is exact for small changes of load and
 * a first look otherwise.
 *
 * @param steady steady state of the base, of `solveSteady`
 */
export function meanResponse(base: Network, steady: SteadyState): MeanResponse {
  return new Response(base, steady);
}

class Response implements MeanResponse {
  readonly points: ReadonlyMap<string, number>;
  readonly volts: Float64Array;
  private readonly base: ReadonlyMap<string, Element>;
  private readonly reference: string;
  /** Row-major: volts at the row's point for one ampere into the column's. */
  private readonly transfer: Float64Array;
  private readonly tubes: ReadonlyMap<string, Group>;
  private readonly alternating: ReadonlySet<string>;
  /** RMS of the alternating voltage of every point. */
  private readonly swings: ReadonlyMap<string, number>;
  private readonly radians: number;

  constructor(base: Network, steady: SteadyState) {
    this.reference = base.reference;
    this.base = new Map(base.elements.filter(isPresent).map((element) => [element.id, element]));
    const names = [...new Set(base.elements.flatMap(elementPoints))].filter((point) => point !== base.reference);
    this.points = new Map(names.map((point, index) => [point, index]));
    this.volts = Float64Array.from(names, (point) => steady.points.get(point)?.meanVolts ?? 0);
    this.swings = new Map(names.map((point) => [point, swingOf(steady, point)]));
    this.alternating = new Set(names.filter((point, index) => alternates(this.swings.get(point)!, this.volts[index]!)));
    this.radians = 2 * Math.PI * steady.hertz;
    this.transfer = transferOhms(names, base.reference, steady);
    this.tubes = new Map(base.elements.filter(isTube).map((element) => [element.id, this.beyondTangent(deviceOf(element), false)]));
  }

  changed(network: Network): Float64Array | undefined {
    const groups = this.groupsOf(network);
    if (groups === undefined) return undefined;
    const plus = groups.flatMap((group) => group.plus);
    const minus = groups.flatMap((group) => group.minus);
    const amps = this.settle(groups, plus, minus);
    if (amps === undefined) return undefined;
    const n = this.points.size;
    const out = Float64Array.from(this.volts);
    for (let p = 0; p < plus.length; p++) {
      const [a, b, i] = [plus[p]!, minus[p]!, amps[p]!];
      if (i === 0) continue;
      for (let k = 0; k < n; k++)
        out[k] = out[k]! - i * ((a < 0 ? 0 : this.transfer[k * n + a]!) - (b < 0 ? 0 : this.transfer[k * n + b]!));
    }
    return out;
  }

  /** What differs from the base, and the tubes that only have to be followed. */
  private groupsOf(network: Network): Group[] | undefined {
    if (network.reference !== this.reference) return undefined;
    const gone = new Map(this.base);
    const groups: Group[] = [];
    for (const element of network.elements) {
      if (!isPresent(element)) continue;
      const before = gone.get(element.id);
      gone.delete(element.id);
      if (before === element) {
        const tube = this.tubes.get(element.id);
        if (tube !== undefined) groups.push(tube);
        continue;
      }
      if (elementPoints(element).some((point) => this.indexOf(point) === undefined || this.alternating.has(point))) return undefined;
      const added = this.added(element);
      const taken = before === undefined ? [] : this.taken(before, element);
      if (added === undefined || taken === undefined) return undefined;
      groups.push(...taken, ...added);
    }
    for (const element of gone.values()) {
      const taken = this.taken(element, undefined);
      if (taken === undefined) return undefined;
      groups.push(...taken);
    }
    return groups;
  }

  private added(element: Element): Group[] | undefined {
    if (isTube(element)) return [this.whole(element)];
    if (element.kind === "capacitor" && !this.isStill(element)) return undefined;
    const branch = branchOf(element);
    return branch === undefined ? undefined : this.branches(branch.nodes, branch.siemens);
  }

  /** What takes an element of the base away. A capacitor may only change in what leaks through it. */
  private taken(element: Element, after: Element | undefined): Group[] | undefined {
    if (elementPoints(element).some((point) => this.alternating.has(point))) return undefined;
    if (isTube(element)) return [this.beyondTangent(deviceOf(element), true)];
    if (element.kind === "capacitor" && !this.isStill(element) && !(after?.kind === "capacitor" && sameStore(element, after)))
      return undefined;
    const branch = branchOf(element);
    return branch === undefined ? undefined : this.branches(branch.nodes, -branch.siemens);
  }

  /** Whether a capacitor would carry next to nothing at the voltages of the base. */
  private isStill({ farads, nodes }: Capacitor): boolean {
    const swing = (this.swings.get(nodes[0]) ?? 0) + (this.swings.get(nodes[1]) ?? 0);
    return 2 * this.radians * farads * swing < STILL_AMPS;
  }

  private branches(nodes: Pair, siemens: number): Group[] {
    if (siemens === 0) return [];
    const [plus, minus] = [this.indexOf(nodes[0])!, this.indexOf(nodes[1])!];
    const evaluate: Group["evaluate"] = (volts, amps, slopes) => {
      amps[0] = siemens * volts[0]!;
      slopes[0] = siemens;
    };
    return [{ plus: [plus], minus: [minus], evaluate }];
  }

  private ports(device: PortDevice): Pick<Group, "plus" | "minus"> {
    return {
      plus: device.ports.map(([plus]) => this.indexOf(plus)!),
      minus: device.ports.map(([, minus]) => this.indexOf(minus)!),
    };
  }

  /** The whole current of a tube that the base does not have, or has otherwise. */
  private whole(element: Tube): Group {
    const device = deviceOf(element);
    const scratch = portScratch(device.ports.length);
    return {
      ...this.ports(device),
      evaluate(volts, amps, slopes) {
        scratch.volts.set(volts);
        device.evaluate(scratch, 0);
        amps.set(scratch.amps);
        slopes.set(scratch.slopes);
      },
    };
  }

  /** What a tube of the base draws beyond its tangent there; or, when it is gone, what its tangent has to give back. */
  private beyondTangent(device: PortDevice, gone: boolean): Group {
    const ports = this.ports(device);
    const count = device.ports.length;
    const start = Float64Array.from(ports.plus, (plus, k) => this.between(this.volts, plus, ports.minus[k]!));
    const scratch = portScratch(count);
    scratch.volts.set(start);
    device.evaluate(scratch, 0);
    const [amps0, slopes0] = [scratch.amps.slice(), scratch.slopes.slice()];
    return {
      ...ports,
      evaluate(volts, amps, slopes) {
        if (!gone) {
          scratch.volts.set(volts);
          device.evaluate(scratch, 0);
        }
        for (let j = 0; j < count; j++) {
          let own = (gone ? 0 : scratch.amps[j]!) - amps0[j]!;
          for (let c = 0; c < count; c++) {
            own -= slopes0[j * count + c]! * (volts[c]! - start[c]!);
            slopes[j * count + c] = (gone ? 0 : scratch.slopes[j * count + c]!) - slopes0[j * count + c]!;
          }
          amps[j] = own;
        }
      },
    };
  }

  /** Port currents at which all groups and the network agree: v = v0 - Z i(v). */
  private settle(groups: readonly Group[], plus: readonly number[], minus: readonly number[]): Float64Array | undefined {
    const size = plus.length;
    const ohms = this.mutual(plus, minus);
    const open = Float64Array.from(plus, (p, k) => this.between(this.volts, p, minus[k]!));
    const volts = Float64Array.from(open);
    const amps = new Float64Array(size);
    const matrix = new Float64Array(size * size);
    const right = new Float64Array(size);
    const pivots = new Int32Array(size);
    const scratch = groups.map(({ plus: { length } }) => ({
      volts: new Float64Array(length),
      amps: new Float64Array(length),
      slopes: new Float64Array(length * length),
    }));
    for (let pass = 0; pass < PASSES; pass++) {
      matrix.fill(0);
      let at = 0;
      for (const [g, group] of groups.entries()) {
        const own = scratch[g]!;
        const count = group.plus.length;
        own.volts.set(volts.subarray(at, at + count));
        group.evaluate(own.volts, own.amps, own.slopes);
        amps.set(own.amps, at);
        for (let c = 0; c < count; c++) {
          for (let j = 0; j < count; j++) {
            const slope = own.slopes[j * count + c]!;
            if (slope === 0) continue;
            for (let r = 0; r < size; r++) matrix[r * size + at + c] = matrix[r * size + at + c]! + ohms[r * size + at + j]! * slope;
          }
        }
        at += count;
      }
      for (let r = 0; r < size; r++) {
        let sum = open[r]! - volts[r]!;
        for (let c = 0; c < size; c++) sum -= ohms[r * size + c]! * amps[c]!;
        right[r] = sum;
        matrix[r * size + r] = matrix[r * size + r]! + 1;
      }
      if (!factorizeSmall(size, matrix, pivots)) return undefined;
      solveSmall(size, matrix, pivots, right, 1);
      const share = pass < DAMPED_FROM ? 1 : DAMPED_SHARE;
      let found = true;
      for (let r = 0; r < size; r++) {
        const step = right[r]!;
        if (!(Math.abs(step) < Number.POSITIVE_INFINITY)) return undefined;
        if (Math.abs(step) > FOUND_VOLTS + FOUND_SHARE * Math.abs(volts[r]!)) found = false;
        volts[r] = volts[r]! + share * step;
      }
      if (!found) continue;
      // Currents at the voltages found, which the last step has moved.
      at = 0;
      for (const [g, group] of groups.entries()) {
        const own = scratch[g]!;
        own.volts.set(volts.subarray(at, at + group.plus.length));
        group.evaluate(own.volts, own.amps, own.slopes);
        amps.set(own.amps, at);
        at += group.plus.length;
      }
      return amps;
    }
    return undefined;
  }

  /** Mutual resistances of the ports, row-major. */
  private mutual(plus: readonly number[], minus: readonly number[]): Float64Array {
    const { transfer } = this;
    const n = this.points.size;
    const size = plus.length;
    const z = (row: number, column: number) => (row < 0 || column < 0 ? 0 : transfer[row * n + column]!);
    const out = new Float64Array(size * size);
    for (let r = 0; r < size; r++)
      for (let c = 0; c < size; c++)
        out[r * size + c] = z(plus[r]!, plus[c]!) - z(plus[r]!, minus[c]!) - z(minus[r]!, plus[c]!) + z(minus[r]!, minus[c]!);
    return out;
  }

  private between(volts: Float64Array, plus: number, minus: number): number {
    return (plus < 0 ? 0 : volts[plus]!) - (minus < 0 ? 0 : volts[minus]!);
  }

  private indexOf(point: string): number | undefined {
    return point === this.reference ? -1 : this.points.get(point);
  }
}

function swingOf(steady: SteadyState, point: string): number {
  const figures = steady.points.get(point);
  return figures === undefined ? 0 : Math.sqrt(Math.max(0, figures.rmsVolts ** 2 - figures.meanVolts ** 2));
}

const alternates = (swing: number, mean: number): boolean => swing > STILL_VOLTS && swing > STILL_SHARE * Math.abs(mean);

type Capacitor = Extract<Element, { kind: "capacitor" }>;

/** The same but for what leaks through it. */
const sameStore = (before: Capacitor, after: Capacitor): boolean =>
  after.farads === before.farads && after.esrOhms === before.esrOhms && before.nodes.every((point, k) => point === after.nodes[k]);

type Tube = Extract<Element, { kind: "triode" | "pentode" }>;
const isTube = (element: Element): element is Tube => element.kind === "triode" || element.kind === "pentode";

function deviceOf(element: Tube): PortDevice {
  const device = makeDevice(element, false);
  if (device === undefined) throw new Error(`${element.id} has no curve`);
  return device;
}

/** What an element lets through of a direct current; undefined where that is no matter of a resistance. */
function branchOf(element: Element): { nodes: Pair; siemens: number } | undefined {
  switch (element.kind) {
    case "resistor":
      return { nodes: element.nodes, siemens: 1 / Math.max(element.ohms, LEAST_OHMS) };
    case "capacitor":
      return { nodes: element.nodes, siemens: element.leakOhms === undefined ? 0 : 1 / Math.max(element.leakOhms, LEAST_OHMS) };
    case "inductor":
      return (element.dcrOhms ?? 0) > 0 ? { nodes: element.nodes, siemens: 1 / element.dcrOhms! } : undefined;
    default:
      return undefined;
  }
}
