import type { Circuit, Conditions, Stamps, StateSlot } from "./circuit.ts";
import { CircuitBuilder } from "./circuit-builder.ts";
import type { PortDevice } from "./devices/port-device.ts";
import type { Element } from "./network.ts";

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
  const builder = new CircuitBuilder(circuit.network.reference, circuit.rowIndex);
  builder.add(element, conditions);
  return builder;
}
