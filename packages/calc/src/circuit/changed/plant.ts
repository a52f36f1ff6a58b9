import type { Circuit } from "../circuit.ts";
import { portScratch } from "../devices/port-device.ts";
import { elementPoints, isPresent } from "../element-points.ts";
import type { Element } from "../network.ts";
import type { SteadyInternals } from "../steady-solution.ts";
import { ChangeBuilder, type PlacedDevice } from "./change-builder.ts";
import { FrequencyFactors, type Pencil } from "./frequency-factors.ts";
import { SparseSum } from "./sparse-sum.ts";
import { type StageScheme, type StageSymbol, stageSymbol } from "./stage-symbol.ts";

/** A device of the base with what is folded into the linear network for it, in siemens, [port][port]. */
export interface FoldedDevice extends PlacedDevice {
  /** Solved for at every stage; the others are taken as linear about their means. */
  active: boolean;
  fold: Float64Array;
}

/** Column of the inverse at all frequencies, for a unit between two rows. Rows behind the base's own answer only themselves. */
export interface PairColumn {
  index: number;
  base: Float64Array | undefined;
  plus: number;
  minus: number;
}

/** Kinds that are solved for at every stage, whatever they do in the base. */
const RECTIFIERS: ReadonlySet<string> = new Set(["diode", "selenium", "vacuum-diode", "gas-diode"]);
/** Least conductance in siemens of a rectifier in the linear network, so that what lies between two blocked ones is defined. */
const LEAST_FOLD = 1e-10;
/** A device is quiet while its current stays within this share of its largest, and these amperes, of its tangent. */
const TANGENT_SHARE = 0.02;
const TANGENT_AMPS = 1e-5;
const STRIDE = 5;

/** A solved circuit made ready for changes: its linear network at the frequencies of its period, devices folded in. */
export class Plant {
  readonly circuit: Circuit;
  readonly symbol: StageSymbol;
  readonly factors: FrequencyFactors;
  readonly devices: readonly FoldedDevice[];
  /** Mean of each port's voltage in the base, and its voltages at every stage for active ones. */
  readonly meanVolts: ReadonlyMap<string, Float64Array>;
  readonly stageVolts: ReadonlyMap<string, readonly Float64Array[]>;
  readonly points: ReadonlyMap<string, number>;
  private readonly contributions = new Map<string, ChangeBuilder>();
  private readonly mutual = new Float64Array(KEPT_PAIRS * KEPT_PAIRS).fill(Number.NaN);
  private readonly pairs = new Map<number, PairColumn>();

  /** @returns undefined for a base that is not of the kind served here: constant, or with flux ports */
  static of(internals: SteadyInternals, scheme: StageScheme): Plant | undefined {
    const { circuit, plan } = internals;
    if (plan === undefined || circuit.fluxPorts.length > 0) return undefined;
    const steps = plan.levels.length;
    if (circuit.harmonics.some(({ order }) => 4 * order > steps)) return undefined;
    const plant = new Plant(internals, steps, scheme);
    return plant.factors.regular ? plant : undefined;
  }

  private constructor(internals: SteadyInternals, steps: number, scheme: StageScheme) {
    const { circuit, trajectory } = internals;
    this.circuit = circuit;
    this.symbol = stageSymbol(circuit.hertz, steps, scheme);
    const total = circuit.ports.length;
    const means = new Map<string, Float64Array>();
    const stages = new Map<string, Float64Array[]>();
    const devices: FoldedDevice[] = [];
    for (const device of circuit.devices) {
      const at = circuit.portIndex.get(device.id)!;
      const volts = device.ports.map((_, k) =>
        Float64Array.from({ length: trajectory.stages }, (__, stage) => trajectory.portVolts[stage * total + at + k]!),
      );
      const mean = Float64Array.from(volts, (wave) => wave.reduce((sum, value, stage) => sum + value * trajectory.weights[stage]!, 0));
      means.set(device.id, mean);
      const slots = device.ports.map((_, k) => circuit.ports[at + k]!);
      const placed = { id: device.id, device, plus: slots.map(({ plus }) => plus), minus: slots.map(({ minus }) => minus) };
      const kind = circuit.elements.get(device.id)!.kind;
      // A tube with several ports is followed along its curves whatever it does; see `stirTubes`.
      const active = RECTIFIERS.has(kind) || (device.ports.length === 1 && !isQuiet(placed, volts, mean));
      if (active) stages.set(device.id, volts);
      devices.push({ ...placed, active, fold: active ? blockedFold(placed, volts[0]!) : tangent(placed, mean).slopes });
    }
    this.devices = devices;
    this.meanVolts = means;
    this.stageVolts = stages;
    this.factors = new FrequencyFactors(this.pencil(), this.symbol.re, this.symbol.im);
    const points = new Map<string, number>();
    for (const element of circuit.elements.values()) {
      for (const point of elementPoints(element)) points.set(point, (points.get(point) ?? 0) + 1);
    }
    this.points = points;
  }

  private pencil(): Pencil {
    const { circuit, devices } = this;
    const { size, stamps, states } = circuit;
    const conductances = new Float64Array(size * size);
    const stores = new Float64Array(size * size);
    const into = (matrix: Float64Array) => (row: number, column: number, value: number) => {
      matrix[row * size + column] = matrix[row * size + column]! + value;
    };
    const sum = new SparseSum();
    for (let k = 0; k < stamps.values.length; k++) sum.add(stamps.rows[k]!, stamps.columns[k]!, stamps.values[k]!);
    for (const { plus, minus, lent } of circuit.ports) sum.addBetween(plus, minus, plus, minus, -lent);
    for (const device of devices) addFold(sum, device, device.fold, 1);
    sum.forEach(into(conductances));
    const storeSum = new SparseSum();
    for (const { plus, minus, coefficient } of states) storeSum.addBetween(plus, minus, plus, minus, coefficient);
    storeSum.forEach(into(stores));
    return { size, conductances, stores };
  }

  /** What an element of the base adds to it. */
  contribution(element: Element): ChangeBuilder {
    let found = this.contributions.get(element.id);
    if (found === undefined) {
      found = this.builder();
      if (isPresent(element)) found.add(element, this.circuit.conditions);
      this.contributions.set(element.id, found);
    }
    return found;
  }

  builder(): ChangeBuilder {
    const { circuit } = this;
    return new ChangeBuilder(circuit.network.reference, circuit.rowNames, circuit.rowIndex);
  }

  /** Mean volts across one pair for a mean ampere into another, in ohms. */
  meanOhms(across: PairColumn, into: PairColumn): number {
    const kept = across.index < KEPT_PAIRS && into.index < KEPT_PAIRS;
    const at = across.index * KEPT_PAIRS + into.index;
    const known = kept ? this.mutual[at]! : Number.NaN;
    if (!Number.isNaN(known)) return known;
    const { size } = this.circuit;
    const side = (row: number): number => {
      if (row < 0) return 0;
      if (row < size) return into.base === undefined ? 0 : into.base[2 * row]!;
      return (row === into.plus ? 1 : 0) - (row === into.minus ? 1 : 0);
    };
    const ohms = side(across.plus) - side(across.minus);
    if (kept) this.mutual[at] = ohms;
    return ohms;
  }

  /** Response of all unknowns to a unit that enters one row and leaves at another; -1 is the reference. */
  pair(plus: number, minus: number): PairColumn {
    const key = (plus + 1) * 65536 + minus + 1;
    let found = this.pairs.get(key);
    if (found === undefined) {
      const { size } = this.circuit;
      const from = plus >= 0 && plus < size ? this.factors.column(plus) : undefined;
      const to = minus >= 0 && minus < size ? this.factors.column(minus) : undefined;
      let base = from;
      if (to !== undefined) base = from === undefined ? to.map((value) => -value) : from.map((value, k) => value - to[k]!);
      found = { index: this.pairs.size, base, plus, minus };
      this.pairs.set(key, found);
    }
    return found;
  }
}

/** Pairs whose mutual resistances are kept. */
const KEPT_PAIRS = 128;

/** Adds the conductances folded in for a device. */
export function addFold(sum: SparseSum, { plus, minus }: PlacedDevice, fold: Float64Array, sign: 1 | -1): void {
  const count = plus.length;
  for (let j = 0; j < count; j++) {
    for (let c = 0; c < count; c++) {
      const value = fold[j * count + c]!;
      if (value !== 0) sum.addBetween(plus[j]!, minus[j]!, plus[c]!, minus[c]!, sign * value);
    }
  }
}

/** Currents of a device's ports in amperes and their slopes in siemens at given port voltages. */
export function tangent({ device }: PlacedDevice, volts: Float64Array): { amps: Float64Array; slopes: Float64Array } {
  const scratch = portScratch(device.ports.length, volts);
  device.evaluate(scratch, 0);
  return scratch;
}

/** Conductance of a rectifier where it conducts least, in siemens. */
export function blockedFold(placed: PlacedDevice, volts: Float64Array): Float64Array {
  let lowest = Number.POSITIVE_INFINITY;
  for (const value of volts) lowest = Math.min(lowest, value);
  const { slopes } = tangent(placed, new Float64Array(placed.plus.length).fill(lowest));
  return slopes.length > 1 ? slopes : Float64Array.of(Math.max(LEAST_FOLD, slopes[0]!));
}

/** Whether the currents of a device follow their tangent about the mean of its voltages throughout a period. */
function isQuiet(placed: PlacedDevice, volts: readonly Float64Array[], mean: Float64Array): boolean {
  const count = mean.length;
  const { amps, slopes } = tangent(placed, mean);
  const own = amps.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const now = new Float64Array(count);
  for (let stage = 0; stage < volts[0]!.length; stage += STRIDE) {
    for (let k = 0; k < count; k++) now[k] = volts[k]![stage]!;
    const found = tangent(placed, now).amps;
    for (let k = 0; k < count; k++) {
      let expected = amps[k]!;
      for (let c = 0; c < count; c++) expected += slopes[k * count + c]! * (now[c]! - mean[c]!);
      if (!(Math.abs(found[k]! - expected) <= TANGENT_SHARE * own + TANGENT_AMPS)) return false;
    }
  }
  return true;
}
