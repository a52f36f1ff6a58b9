import { CircuitError, type Element, type Network, sensitivities, solveSteady } from "@underchassis/calc";
import { SHORT_OHMS } from "./applyFault.ts";
import { SEEN_LEAK_OHMS } from "./atRest.ts";
import { coldTransfer, pointIndex, shownOhms } from "./coldTransfer.ts";
import type { Fault } from "./fault.ts";
import { COARSE, type Ground, probeOf, type Situation } from "./ground.ts";
import { scaled } from "./observable.ts";

/** A resistance between two points put in (above zero) or taken out (below), in ohms. */
interface Branch {
  from: string;
  to: string;
  ohms: number;
}

/** Mean voltages of one situation, and what a direct current put into any point does to them all. */
interface Response {
  index: ReadonlyMap<string, number>;
  volts: Float64Array;
  /** Row-major: volts at the row's point for one ampere into the column's. */
  transfer: Float64Array;
  resistors: ReadonlyMap<string, { nodes: readonly [string, string]; ohms: number }>;
  situation: Situation;
}

/** Current that shows the response without disturbing anything, in amperes. */
const PROBE_AMPS = 1e-9;

/**
 * A first look at faults that are resistances put in, taken out or moved: the chassis is linearised once about its steady state, and each
 * fault is a change of rank one or two (Woodbury). With the power off this is exact; with power it is as good as rectifiers and tubes
 * are straight, so that it picks what deserves a simulation and decides nothing.
 */
export class Screen {
  readonly #responses: readonly Response[];
  readonly #ground: Ground;

  constructor(ground: Ground, hertz: number) {
    this.#ground = ground;
    this.#responses = ground.situations.flatMap((situation) => responseOf(situation, hertz) ?? []);
  }

  /** Scaled readings under a fault; NaN where only a simulation tells. Undefined when the fault is no matter of resistances. */
  predict(fault: Fault): Float64Array | undefined {
    const { observables, nominal, loading } = this.#ground;
    const out = new Float64Array(observables.length).fill(Number.NaN);
    for (const response of this.#responses) {
      const branches = branchesOf(response, fault);
      if (branches === undefined) return undefined;
      for (const index of response.situation.indices) {
        const { quantity } = observables[index]!;
        if (quantity !== "dc-volts" && quantity !== "ohms") continue;
        if (branches.length === 0) out[index] = nominal[index]!;
      }
      if (branches.length === 0) continue;
      if (response.situation.steady === undefined) this.#coldReadings(response, branches, out);
      else {
        const volts = changedVolts(response, branches);
        if (volts === undefined) return undefined;
        for (const index of response.situation.indices) {
          const probe = probeOf(response.situation.compiled, observables[index]!);
          if (probe?.quantity !== "dc-volts") continue;
          const [a, b] = [response.index.get(probe.from), response.index.get(probe.to)];
          out[index] = ((a === undefined ? 0 : volts[a]!) - (b === undefined ? 0 : volts[b]!)) * loading[index]!;
        }
      }
    }
    return out;
  }

  #coldReadings(response: Response, branches: readonly Branch[], out: Float64Array): void {
    const { compiled, indices } = response.situation;
    for (const index of indices) {
      const { at, to, quantity } = this.#ground.observables[index]!;
      const [from, other] = [compiled.pointOf(at), compiled.pointOf(to)];
      if (quantity !== "ohms" || from === undefined || other === undefined) continue;
      const ohms = changedOhms(response, branches, from, other);
      if (ohms !== undefined) out[index] = scaled("ohms", shownOhms(ohms));
    }
  }
}

function responseOf(situation: Situation, hertz: number): Response | undefined {
  const { network, steady } = situation;
  const index = pointIndex(network);
  const points = [...index.keys()];
  const resistors = new Map(
    network.elements.flatMap((element) =>
      element.kind === "resistor" ? [[element.id, { nodes: element.nodes, ohms: element.ohms }] as const] : [],
    ),
  );
  try {
    return steady === undefined
      ? { index, resistors, situation, volts: new Float64Array(points.length), transfer: coldTransfer(network, index) }
      : {
          index,
          resistors,
          situation,
          volts: Float64Array.from(points, (point) => steady.points.get(point)?.meanVolts ?? 0),
          transfer: liveTransfer(situation, points, hertz),
        };
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}

/** Response of the powered chassis: sensitivities over vanishing currents put into every point. */
function liveTransfer({ network, steady }: Situation, points: readonly string[], hertz: number): Float64Array {
  const sources: Element[] = points.map((point) => ({
    kind: "current-source",
    id: `put ${point}`,
    nodes: [network.reference, point],
    amps: PROBE_AMPS,
  }));
  const tested: Network = { ...network, elements: [...network.elements, ...sources] };
  const solved = solveSteady(tested, { ...COARSE, hertz, ...(steady === undefined ? {} : { warmStart: steady }) });
  const probes = points.map((point) => ({ quantity: "dc-volts" as const, from: point, to: network.reference }));
  const { matrix } = sensitivities(
    tested,
    probes,
    sources.map(({ id }) => ({ element: id, parameter: "amps" })),
    solved,
  );
  return matrix.map((value) => value / PROBE_AMPS);
}

/** The resistances that a fault puts in or takes out; undefined where it is of another kind, none where it does not show. */
function branchesOf({ resistors, situation }: Response, fault: Fault): Branch[] | undefined {
  if (fault.kind === "bridge") return fault.to === undefined ? undefined : [{ from: fault.part, to: fault.to, ohms: SHORT_OHMS }];
  const own = resistors.get(fault.element);
  const element = situation.network.elements.find(({ id }) => id === fault.element);
  if (element === undefined) return situation.network.elements.some(({ id }) => fault.element.startsWith(`${id}.`)) ? undefined : [];
  if (fault.kind === "gassy") {
    if (element.kind !== "triode" && element.kind !== "pentode") return undefined;
    return [{ from: element.nodes.plate, to: element.nodes.grid, ohms: fault.value ?? SHORT_OHMS }];
  }
  if (element.kind === "capacitor" && fault.parameter === "leakOhms") {
    if (situation.steady === undefined && (fault.value ?? 0) >= SEEN_LEAK_OHMS) return [];
    return [{ from: element.nodes[0], to: element.nodes[1], ohms: Math.max(fault.value ?? SHORT_OHMS, SHORT_OHMS) }];
  }
  if (own === undefined) return undefined;
  const [from, to] = own.nodes;
  const out = { from, to, ohms: -own.ohms };
  if (fault.kind === "exchanged") {
    const other = resistors.get(fault.with ?? "");
    if (other === undefined) return undefined;
    return [change(own, other.ohms), change(other, own.ohms)];
  }
  if (fault.kind === "moved-lead") {
    const [a, b] = fault.lead === "0" ? [fault.to ?? "", to] : [from, fault.to ?? ""];
    return a === b ? [out] : [out, { from: a, to: b, ohms: own.ohms }];
  }
  if (fault.parameter !== "ohms" || fault.value === undefined) return fault.kind === "open" ? [out] : undefined;
  return fault.value === Number.POSITIVE_INFINITY ? [out] : [change(own, Math.max(fault.value, SHORT_OHMS))];
}

/** Another value in the same place, as one resistance across it; below zero where the new value is the higher one. */
function change({ nodes: [from, to], ohms }: { nodes: readonly [string, string]; ohms: number }, value: number): Branch {
  return { from, to, ohms: 1 / (1 / value - 1 / ohms) };
}

/** The currents of the branches from the voltages without them: (diag(R) + U' Z U) i = U' v. */
function currents(
  { index, transfer }: Response,
  branches: readonly Branch[],
  volts: Float64Array | ((point: number | undefined) => number),
): Float64Array | undefined {
  const k = branches.length;
  const n = index.size;
  const at = branches.map(({ from, to }) => [index.get(from), index.get(to)] as const);
  const z = (i: number | undefined, j: number | undefined) => (i === undefined || j === undefined ? 0 : transfer[i * n + j]!);
  const v = (i: number | undefined) => (i === undefined ? 0 : typeof volts === "function" ? volts(i) : volts[i]!);
  const matrix = new Float64Array(k * k);
  const right = new Float64Array(k);
  for (const [r, [a, b]] of at.entries()) {
    right[r] = v(a) - v(b);
    for (const [c, [p, q]] of at.entries()) matrix[r * k + c] = z(a, p) - z(a, q) - z(b, p) + z(b, q);
    matrix[r * k + r] = matrix[r * k + r]! + branches[r]!.ohms;
  }
  return solveTiny(matrix, right, k);
}

function changedVolts(response: Response, branches: readonly Branch[]): Float64Array | undefined {
  const { index, transfer, volts } = response;
  const amps = currents(response, branches, volts);
  if (amps === undefined) return undefined;
  const n = index.size;
  const out = Float64Array.from(volts);
  for (const [r, { from, to }] of branches.entries()) {
    const [a, b] = [index.get(from), index.get(to)];
    for (let i = 0; i < n; i += 1)
      out[i] = out[i]! - amps[r]! * ((a === undefined ? 0 : transfer[i * n + a]!) - (b === undefined ? 0 : transfer[i * n + b]!));
  }
  return out;
}

/** Ohms between two points when the branches are there: one ampere through them, and what the branches carry of it. */
function changedOhms(response: Response, branches: readonly Branch[], from: string, to: string): number | undefined {
  const { index, transfer } = response;
  const n = index.size;
  const [f, t] = [index.get(from), index.get(to)];
  const z = (i: number | undefined, j: number | undefined) => (i === undefined || j === undefined ? 0 : transfer[i * n + j]!);
  const volts = (i: number | undefined) => z(i, f) - z(i, t);
  const amps = currents(response, branches, volts);
  if (amps === undefined) return undefined;
  let ohms = volts(f) - volts(t);
  for (const [r, { from: a, to: b }] of branches.entries()) {
    const [p, q] = [index.get(a), index.get(b)];
    ohms -= amps[r]! * (z(f, p) - z(f, q) - z(t, p) + z(t, q));
  }
  return Math.max(0, ohms);
}

/** One or two equations. */
function solveTiny(matrix: Float64Array, right: Float64Array, k: number): Float64Array | undefined {
  if (k === 1) return Math.abs(matrix[0]!) < 1e-9 ? undefined : Float64Array.of(right[0]! / matrix[0]!);
  const [a, b, c, d] = matrix as unknown as [number, number, number, number];
  const determinant = a * d - b * c;
  if (Math.abs(determinant) < 1e-9 * Math.max(Math.abs(a * d), Math.abs(b * c), 1e-9)) return undefined;
  return Float64Array.of((right[0]! * d - b * right[1]!) / determinant, (a * right[1]! - c * right[0]!) / determinant);
}
