import { makeDevice } from "../devices/make-device.ts";
import { elementPoints, isPresent } from "../element-points.ts";
import { fundamentalHertz } from "../fundamental.ts";
import type { Element, Network } from "../network.ts";
import type { ChangeBuilder } from "./change-builder.ts";
import { blockedFold, type FoldedDevice, type Plant } from "./plant.ts";
import { SparseSum } from "./sparse-sum.ts";

/** What differs between the base and a changed network, in the rows of the base and new ones behind them. */
export interface NetworkChange {
  network: Network;
  /** Differences of conductances and of stores (times the complex frequency). Devices are not among them. */
  conductances: SparseSum;
  stores: SparseSum;
  /** Devices of the base that are gone, and all devices of the changed network. */
  gone: readonly FoldedDevice[];
  devices: readonly FoldedDevice[];
  /** Devices that the base does not have, or has otherwise. */
  fresh: ReadonlySet<string>;
  /** Rows in all. */
  size: number;
  elements: ReadonlyMap<string, Element>;
  /** Row of a point or of an element's branch current; undefined where there is none. */
  pointRow: (point: string) => number | undefined;
  branchRow: (id: string) => number | undefined;
  /** Row by its name in a circuit; -1 when there is none. */
  rowOf: (name: string) => number;
  /** Resistances in ohms that changed elements were stamped with. */
  resistances: ReadonlyMap<string, number>;
  constant: readonly (readonly [row: number, value: number])[];
  /** Sine and cosine of each harmonic of each source. */
  harmonics: readonly { order: number; row: number; sine: number; cosine: number }[];
  /** Whether points may have lost, or sources and coils closed, a path. */
  reshaped: boolean;
}

const TIE_SIEMENS = 1e-9;
/** Voltage in volts at which a rectifier that the base does not have is looked at for what it lets through in reverse. */
const REVERSE_VOLTS = -50;

/** Whether an element differs in values alone, so that every steady path of the base is still there. */
function sameShape(before: Element, after: Element): boolean {
  if (before.kind !== after.kind || isPresent(before) !== isPresent(after)) return false;
  if (before.kind === "capacitor" && after.kind === "capacitor" && (before.leakOhms === undefined) !== (after.leakOhms === undefined))
    return false;
  if (before.kind === "inductor" && after.kind === "inductor" && (before.dcrOhms ?? 0) > 0 !== (after.dcrOhms ?? 0) > 0) return false;
  const [a, b] = [elementPoints(before), elementPoints(after)];
  return a.length === b.length && a.every((point, k) => point === b[k]);
}

/**
 * Finds what differs. Elements that are the same object count as untouched.
 *
 * @param baseElements elements of the base by name, absent ones included
 * @param lit regulator tubes that are lit
 * @param ties points tied to the reference in the changed network, and in the base
 * @returns undefined where the change is none of the kind served: another fundamental, a choke whose inductance swings
 */
export function networkChange(
  plant: Plant,
  baseElements: ReadonlyMap<string, Element>,
  network: Network,
  lit: ReadonlySet<string>,
  ties: { now: readonly string[]; before: readonly string[] },
  hertz: number | undefined,
): NetworkChange | undefined {
  const { circuit } = plant;
  if (network.reference !== circuit.network.reference) return undefined;
  const conductances = new SparseSum();
  const stores = new SparseSum();
  const elements = new Map<string, Element>();
  const before: Element[] = [];
  const after: Element[] = [];
  let reshaped = false;
  let seen = 0;
  for (const element of network.elements) {
    if (isPresent(element)) elements.set(element.id, element);
    const old = baseElements.get(element.id);
    if (old !== undefined) seen++;
    if (old === element) continue;
    after.push(element);
    if (old !== undefined) before.push(old);
    if (old === undefined || !sameShape(old, element)) reshaped = true;
    if (element.kind === "inductor" && element.swing !== undefined) return undefined;
  }
  if (seen < baseElements.size) {
    reshaped = true;
    const ids = new Set(network.elements.map(({ id }) => id));
    for (const element of baseElements.values()) if (!ids.has(element.id)) before.push(element);
  }
  const builder = plant.builder();
  for (const element of after) if (isPresent(element)) builder.add(element, circuit.conditions);
  subtract(plant, before, builder, conductances, stores, reshaped ? after : []);
  const stamps = builder.stamps;
  for (let k = 0; k < stamps.values.length; k++) conductances.add(stamps.rows[k]!, stamps.columns[k]!, stamps.values[k]!);
  for (const { plus, minus, coefficient } of builder.states) stores.addBetween(plus, minus, plus, minus, coefficient);
  const pointRow = (point: string): number | undefined => builder.pointRows.get(point) ?? circuit.pointRows.get(point);
  for (const point of ties.now) {
    const row = pointRow(point);
    if (row !== undefined && !ties.before.includes(point)) conductances.add(row, row, TIE_SIEMENS);
  }
  for (const point of ties.before) {
    const row = circuit.pointRows.get(point);
    if (row !== undefined && !ties.now.includes(point)) conductances.add(row, row, -TIE_SIEMENS);
  }
  const { gone, devices, fresh } = changedDevices(plant, before, builder, elements, lit);
  const sources = changedSources(plant, builder, elements, after, hertz);
  if (sources === undefined) return undefined;
  return {
    network,
    conductances,
    stores,
    gone,
    devices,
    fresh,
    size: builder.rowNames.length,
    elements,
    pointRow,
    rowOf: (name) => {
      const known = circuit.rowIndex.get(name);
      return known ?? builder.rowNames.indexOf(name, circuit.size);
    },
    resistances: builder.resistances,
    branchRow: (id) => builder.branchRows.get(id) ?? circuit.branchRows.get(id),
    ...sources,
    reshaped,
  };
}

/** Takes elements of the base out, and gives every row that is left empty an equation of its own. */
function subtract(
  plant: Plant,
  before: readonly Element[],
  builder: ChangeBuilder,
  conductances: SparseSum,
  stores: SparseSum,
  after: readonly Element[],
): void {
  const touched = new Map<string, number>();
  for (const element of before) {
    const { stamps, states, owned } = plant.contribution(element);
    for (let k = 0; k < stamps.values.length; k++) conductances.add(stamps.rows[k]!, stamps.columns[k]!, -stamps.values[k]!);
    for (const { plus, minus, coefficient } of states) stores.addBetween(plus, minus, plus, minus, -coefficient);
    for (const row of owned) if (!builder.owned.has(row)) conductances.add(row, row, 1);
    if (isPresent(element)) for (const point of elementPoints(element)) touched.set(point, (touched.get(point) ?? 0) + 1);
  }
  for (const element of after) {
    if (isPresent(element)) for (const point of elementPoints(element)) touched.set(point, (touched.get(point) ?? 0) - 1);
  }
  for (const [point, removed] of touched) {
    const row = plant.circuit.pointRows.get(point) ?? -1;
    if (row >= 0 && removed === plant.points.get(point)) conductances.add(row, row, 1);
  }
}

function changedDevices(
  plant: Plant,
  before: readonly Element[],
  builder: ChangeBuilder,
  elements: ReadonlyMap<string, Element>,
  lit: ReadonlySet<string>,
): { gone: FoldedDevice[]; devices: FoldedDevice[]; fresh: Set<string> } {
  const replaced = new Set(before.map(({ id }) => id));
  const placed = new Map(builder.placed.map((device) => [device.id, device]));
  const known = new Map(plant.devices.map((device) => [device.id, device]));
  const gone: FoldedDevice[] = [];
  const devices: FoldedDevice[] = [];
  const fresh = new Set<string>();
  for (const old of plant.devices) {
    if (replaced.has(old.id)) {
      const now = placed.get(old.id);
      const inPlace = now !== undefined && sameRows(old.plus, now.plus) && sameRows(old.minus, now.minus);
      if (!inPlace) gone.push(old);
      continue;
    }
    const relit = plant.circuit.conditions.lit.has(old.id) !== lit.has(old.id);
    devices.push(
      relit ? { ...old, device: makeDevice(elements.get(old.id)!, lit.has(old.id))!, fold: new Float64Array(old.fold.length) } : old,
    );
  }
  for (const now of placed.values()) {
    const old = known.get(now.id);
    const element = elements.get(now.id)!;
    const device = element.kind === "gas-regulator" ? makeDevice(element, lit.has(now.id))! : now.device;
    fresh.add(now.id);
    const inPlace = old !== undefined && sameRows(old.plus, now.plus) && sameRows(old.minus, now.minus);
    const count = now.plus.length;
    const rectifier = count === 1 && (element.kind === "diode" || element.kind === "selenium" || element.kind.endsWith("-diode"));
    if (inPlace && old.active === rectifier && !rectifier) devices.push({ ...now, device, active: false, fold: old.fold });
    else {
      if (inPlace) gone.push(old);
      const fold = rectifier ? blockedFold(now, Float64Array.of(REVERSE_VOLTS)) : new Float64Array(count * count);
      devices.push({ ...now, device, active: rectifier, fold });
    }
  }
  return { gone, devices, fresh };
}

function sameRows(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((row, k) => row === b[k]);
}

function changedSources(
  plant: Plant,
  builder: ChangeBuilder,
  elements: ReadonlyMap<string, Element>,
  after: readonly Element[],
  hertz: number | undefined,
): Pick<NetworkChange, "constant" | "harmonics"> | undefined {
  const { circuit } = plant;
  const constant: (readonly [number, number])[] = [];
  const sines: (readonly [row: number, amplitude: number, hertz: number, phase: number])[] = [];
  const fresh = new Set(after);
  for (const element of elements.values()) {
    if (element.kind !== "voltage-source" && element.kind !== "current-source") continue;
    if (fresh.has(element)) continue;
    const added = plant.contribution(element);
    constant.push(...added.constant);
    sines.push(...added.sines);
  }
  constant.push(...builder.constant);
  sines.push(...builder.sines);
  if (sines.length === 0) return undefined;
  if (builder.sines.length > 0) {
    const fundamental = fundamentalHertz(
      sines.map((sine) => sine[2]),
      hertz,
    );
    if (Math.abs(fundamental - circuit.hertz) > 1e-9 * circuit.hertz) return undefined;
  }
  const harmonics = sines.map(([row, amplitude, frequency, phase]) => ({
    order: Math.round(frequency / circuit.hertz),
    row,
    sine: amplitude * Math.cos(phase),
    cosine: amplitude * Math.sin(phase),
  }));
  if (harmonics.some(({ order }) => 4 * order > plant.symbol.steps)) return undefined;
  return { constant, harmonics };
}
