/** Short builders of elements for the tests of this folder. */
import type { Capacitor, CurrentSource, Diode, Element, Inductor, Network, Resistor, VacuumDiode, VoltageSource } from "./network.ts";

export const resistor = (id: string, a: string, b: string, ohms: number): Resistor => ({ kind: "resistor", id, nodes: [a, b], ohms });
export const capacitor = (id: string, a: string, b: string, farads: number, more: Partial<Capacitor> = {}): Capacitor => ({
  kind: "capacitor",
  id,
  nodes: [a, b],
  farads,
  ...more,
});
export const inductor = (id: string, a: string, b: string, henries: number, more: Partial<Inductor> = {}): Inductor => ({
  kind: "inductor",
  id,
  nodes: [a, b],
  henries,
  ...more,
});
export const battery = (id: string, a: string, b: string, dcVolts: number): VoltageSource => ({
  kind: "voltage-source",
  id,
  nodes: [a, b],
  dcVolts,
});
export const line = (id: string, a: string, b: string, rmsVolts: number, hertz = 60, phaseRadians = 0): VoltageSource => ({
  kind: "voltage-source",
  id,
  nodes: [a, b],
  rmsVolts,
  hertz,
  phaseRadians,
});
export const load = (id: string, a: string, b: string, amps: number): CurrentSource => ({
  kind: "current-source",
  id,
  nodes: [a, b],
  amps,
});
/** Small silicon rectifier, values of the order of common general-purpose types (common-practice). */
export const silicon = (id: string, a: string, b: string): Diode => ({
  kind: "diode",
  id,
  nodes: [a, b],
  saturationAmps: 1e-9,
  emission: 1.8,
  ohms: 0.05,
});
export const vacuum = (id: string, a: string, b: string, perveance = 3.5e-4): VacuumDiode => ({
  kind: "vacuum-diode",
  id,
  nodes: [a, b],
  perveance,
});
export const network = (...elements: Element[]): Network => ({ reference: "0", elements });
