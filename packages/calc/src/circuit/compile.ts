import { BRANCH_OHMS, CONTACT_OHMS, CORE_HENRIES } from "./constants.ts";
import { makeDevice } from "./devices/make-device.ts";
import type { PortDevice } from "./devices/port-device.ts";
import { elementPoints, isPresent } from "./element-points.ts";
import { fundamentalHertz } from "./fundamental.ts";
import type { Element, Network, Transformer } from "./network.ts";

/** What is not in the network itself but found by solving: resistances of hot wires, and which gas tubes are lit. */
export interface Conditions {
  ohms: ReadonlyMap<string, number>;
  lit: ReadonlySet<string>;
}

/** Entries of a matrix in the order they were stamped; entries of the same place add up. */
export interface Stamps {
  rows: number[];
  columns: number[];
  values: number[];
}

/**
 * An energy store: coefficient * d/dt of the unknown (plus - minus), entering those rows with the same signs. A
 * capacitor is (farads, two points); a coil is (-henries, its own branch row). -1 stands for the reference.
 */
export interface StateSlot {
  id: string;
  kind: "volts" | "amps";
  coefficient: number;
  plus: number;
  minus: number;
}

/** A port of a device: rows of its two points and the conductance lent to the linear network there. */
export interface PortSlot {
  plus: number;
  minus: number;
  lent: number;
}

/** A source term at a harmonic of the fundamental: right sides in phase with sine and cosine. */
export interface Harmonic {
  order: number;
  sine: Float64Array;
  cosine: Float64Array;
}

/** A network made ready for analysis: G y + sum of stores + device currents = sources, with y the point voltages and branch currents. */
export interface Circuit {
  network: Network;
  conditions: Conditions;
  /** Elements that are present, by name. */
  elements: ReadonlyMap<string, Element>;
  /** Row of each point; the reference has -1. */
  pointRows: ReadonlyMap<string, number>;
  /** Row of the branch current of an element or winding (`T1.primary`). */
  branchRows: ReadonlyMap<string, number>;
  /** Row of the point inside a capacitor between its series resistance and the capacitor itself. */
  innerRows: ReadonlyMap<string, number>;
  /** Index in `states` of an element's store. */
  stateIndex: ReadonlyMap<string, number>;
  /** First port of each device. */
  portIndex: ReadonlyMap<string, number>;
  /** Resistance in ohms that each resistive element has in this circuit. */
  resistances: ReadonlyMap<string, number>;
  size: number;
  rowNames: readonly string[];
  rowIndex: ReadonlyMap<string, number>;
  stamps: Stamps;
  states: readonly StateSlot[];
  devices: readonly PortDevice[];
  ports: readonly PortSlot[];
  /** Ports whose device stores flux: their states follow the linear ones in the state vector. */
  fluxPorts: readonly { port: number; device: PortDevice & { flux: NonNullable<PortDevice["flux"]> } }[];
  constant: Float64Array;
  harmonics: readonly Harmonic[];
  /** Fundamental frequency of the sine sources, 0 when there is none. */
  hertz: number;
}

/** Conductance in siemens that ties an island of points to the reference when the caller asks for it: insulation of 1 gigohm. */
const TIE_SIEMENS = 1e-9;

class Builder {
  readonly rowNames: string[] = [];
  readonly pointRows = new Map<string, number>();
  readonly branchRows = new Map<string, number>();
  readonly innerRows = new Map<string, number>();
  readonly stateIndex = new Map<string, number>();
  readonly portIndex = new Map<string, number>();
  readonly resistances = new Map<string, number>();
  readonly stamps: Stamps = { rows: [], columns: [], values: [] };
  readonly states: StateSlot[] = [];
  readonly devices: PortDevice[] = [];
  readonly ports: PortSlot[] = [];
  readonly constant: [row: number, value: number][] = [];
  readonly sines: [row: number, amplitude: number, hertz: number, phase: number][] = [];
  /** Rows laid down by an earlier layout, when single elements are stamped anew. */
  private readonly laid: ReadonlyMap<string, number> | undefined;

  constructor(reference: string, laid?: ReadonlyMap<string, number>) {
    this.pointRows.set(reference, -1);
    this.laid = laid;
  }

  row(name: string): number {
    const laid = this.laid?.get(name);
    if (laid !== undefined) return laid;
    this.rowNames.push(name);
    return this.rowNames.length - 1;
  }

  point(name: string): number {
    const known = this.pointRows.get(name);
    if (known !== undefined) return known;
    const row = this.row(`point ${name}`);
    this.pointRows.set(name, row);
    return row;
  }

  stamp(row: number, column: number, value: number): void {
    if (row < 0 || column < 0) return;
    this.stamps.rows.push(row);
    this.stamps.columns.push(column);
    this.stamps.values.push(value);
  }

  conductance(plus: number, minus: number, siemens: number): void {
    this.stamp(plus, plus, siemens);
    this.stamp(minus, minus, siemens);
    this.stamp(plus, minus, -siemens);
    this.stamp(minus, plus, -siemens);
  }

  /** A branch current with v(plus) - v(minus) - ohms * i = ...; returns its row. */
  branch(name: string, plus: number, minus: number, ohms: number): number {
    const row = this.row(`current of ${name}`);
    this.branchRows.set(name, row);
    this.stamp(plus, row, 1);
    this.stamp(minus, row, -1);
    this.stamp(row, plus, 1);
    this.stamp(row, minus, -1);
    this.stamp(row, row, -ohms);
    return row;
  }

  resistance(id: string, plus: number, minus: number, ohms: number): void {
    this.resistances.set(id, ohms);
    if (ohms < BRANCH_OHMS) this.branch(id, plus, minus, ohms);
    else this.conductance(plus, minus, 1 / ohms);
  }

  store(id: string, kind: StateSlot["kind"], coefficient: number, plus: number, minus: number): void {
    this.stateIndex.set(id, this.states.length);
    this.states.push({ id, kind, coefficient, plus, minus });
  }

  /** Windings share one voltage per turn; their ampere-turns add up to those of the magnetizing current. */
  transformer(element: Transformer): void {
    const core = this.row(`volts per turn of ${element.id}`);
    for (const winding of element.windings) {
      const row = this.branch(`${element.id}.${winding.id}`, this.point(winding.nodes[0]), this.point(winding.nodes[1]), winding.ohms);
      this.stamp(row, core, -winding.turns);
      this.stamp(core, row, -winding.turns);
    }
    const magnetizing = this.row(`magnetizing current of ${element.id}`);
    const turns = element.windings[0]!.turns;
    this.stamp(magnetizing, core, turns);
    this.stamp(core, magnetizing, turns);
    this.store(element.id, "amps", -(element.magnetizingHenries ?? CORE_HENRIES), magnetizing, -1);
  }

  device(device: PortDevice): void {
    this.portIndex.set(device.id, this.ports.length);
    this.devices.push(device);
    device.ports.forEach((pair, index) => {
      const slot = { plus: this.point(pair[0]), minus: this.point(pair[1]), lent: device.lent[index]! };
      this.ports.push(slot);
      this.conductance(slot.plus, slot.minus, slot.lent);
    });
  }

  add(element: Element, conditions: Conditions): void {
    const device = makeDevice(element, conditions.lit.has(element.id));
    if (device !== undefined) {
      this.device(device);
      return;
    }
    if (element.kind === "transformer") {
      this.transformer(element);
      return;
    }
    if (element.kind === "triode" || element.kind === "pentode") return;
    const plus = this.point(element.nodes[0]);
    const minus = this.point(element.nodes[1]);
    switch (element.kind) {
      case "resistor":
      case "voltmeter":
        this.resistance(element.id, plus, minus, element.ohms);
        return;
      case "switch":
        this.resistance(element.id, plus, minus, element.contactOhms ?? CONTACT_OHMS);
        return;
      case "filament":
        this.resistance(element.id, plus, minus, conditions.ohms.get(element.id) ?? element.ratedOhms);
        return;
      case "thermistor":
        this.resistance(element.id, plus, minus, conditions.ohms.get(element.id) ?? element.r25Ohms);
        return;
      case "capacitor": {
        let inner = plus;
        if ((element.esrOhms ?? 0) > 0) {
          inner = this.row(`inside of ${element.id}`);
          this.innerRows.set(element.id, inner);
          this.conductance(plus, inner, 1 / element.esrOhms!);
        }
        this.conductance(inner, minus, element.leakOhms === undefined ? 0 : 1 / element.leakOhms);
        this.store(element.id, "volts", element.farads, inner, minus);
        return;
      }
      case "inductor": {
        const row = this.branch(element.id, plus, minus, element.dcrOhms ?? 0);
        this.store(element.id, "amps", -element.henries, row, -1);
        return;
      }
      case "voltage-source": {
        const row = this.branch(element.id, plus, minus, 0);
        this.constant.push([row, element.dcVolts ?? 0]);
        const rms = element.rmsVolts ?? 0;
        if (rms > 0) this.sines.push([row, Math.SQRT2 * rms, element.hertz!, element.phaseRadians ?? 0]);
        return;
      }
      case "current-source":
        this.constant.push([plus, -element.amps], [minus, element.amps]);
        return;
    }
  }
}

/** Adds up the sine sources by harmonic of the fundamental. */
function gatherHarmonics(sines: Builder["sines"], hertz: number, size: number): Harmonic[] {
  const harmonics = new Map<number, Harmonic>();
  for (const [row, amplitude, frequency, phase] of sines) {
    const order = Math.round(frequency / hertz);
    let harmonic = harmonics.get(order);
    if (harmonic === undefined) {
      harmonic = { order, sine: new Float64Array(size), cosine: new Float64Array(size) };
      harmonics.set(order, harmonic);
    }
    harmonic.sine[row] = harmonic.sine[row]! + amplitude * Math.cos(phase);
    harmonic.cosine[row] = harmonic.cosine[row]! + amplitude * Math.sin(phase);
  }
  return [...harmonics.values()].sort((a, b) => a.order - b.order);
}

/**
 * Lays a checked network out in rows: points, branch currents, cores; and its stores, ports and sources.
 *
 * @param ties points that get a tie of 1 gigohm to the reference
 * @param hertz fundamental frequency when it is not that of the sources themselves
 */
export function compileNetwork(network: Network, conditions: Conditions, ties: readonly string[] = [], hertz?: number): Circuit {
  const builder = new Builder(network.reference);
  const present = network.elements.filter(isPresent);
  for (const element of present) for (const point of elementPoints(element)) builder.point(point);
  for (const element of present) builder.add(element, conditions);
  for (const point of ties) builder.conductance(builder.point(point), -1, TIE_SIEMENS);
  const size = builder.rowNames.length;
  const fundamental = fundamentalHertz(
    builder.sines.map((sine) => sine[2]),
    hertz,
  );
  const constant = new Float64Array(size);
  for (const [row, value] of builder.constant) if (row >= 0) constant[row] = constant[row]! + value;
  const fluxPorts: Circuit["fluxPorts"][number][] = [];
  for (const device of builder.devices) {
    if (device.flux === undefined) continue;
    const port = builder.portIndex.get(device.id)!;
    builder.stateIndex.set(device.id, builder.states.length + fluxPorts.length);
    fluxPorts.push({ port, device: device as Circuit["fluxPorts"][number]["device"] });
  }
  return {
    network,
    conditions,
    elements: new Map(present.map((element) => [element.id, element])),
    pointRows: builder.pointRows,
    branchRows: builder.branchRows,
    innerRows: builder.innerRows,
    stateIndex: builder.stateIndex,
    portIndex: builder.portIndex,
    resistances: builder.resistances,
    size,
    rowNames: builder.rowNames,
    rowIndex: new Map(builder.rowNames.map((name, row) => [name, row])),
    stamps: builder.stamps,
    states: builder.states,
    devices: builder.devices,
    ports: builder.ports,
    fluxPorts,
    constant,
    harmonics: gatherHarmonics(builder.sines, fundamental, size),
    hertz: fundamental,
  };
}

/** What one element adds to the equations of a circuit that is already laid out. */
export interface Contribution {
  stamps: Stamps;
  states: readonly StateSlot[];
  devices: readonly PortDevice[];
  resistances: ReadonlyMap<string, number>;
  constant: readonly (readonly [row: number, value: number])[];
  sines: readonly (readonly [row: number, amplitude: number, hertz: number, phase: number])[];
}

/** Stamps one element, which may differ in value from the circuit's own, onto the rows of that circuit. */
export function stampElement(circuit: Circuit, element: Element, conditions: Conditions): Contribution {
  const builder = new Builder(circuit.network.reference, circuit.rowIndex);
  builder.add(element, conditions);
  return builder;
}
