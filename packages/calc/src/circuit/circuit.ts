import type { PortDevice } from "./devices/port-device.ts";
import type { Element, Network } from "./network.ts";

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
