import type { Circuit } from "./circuit.ts";
import { type Contribution, stampElement } from "./contribution.ts";
import { portScratch } from "./devices/port-device.ts";
import { thermistorKelvin } from "./element-figures.ts";
import { solveFactored } from "./lu.ts";
import type { Element } from "./network.ts";
import { scaleParameter } from "./parameter.ts";
import { filamentOhms, thermistorOhms, thermistorRelief } from "./self-heating.ts";
import { CircuitError, type ParameterRef } from "./solution.ts";
import { waveFigures } from "./wave-figures.ts";
import type { Waves } from "./waves.ts";

/** Half the relative step of the central difference by which an element's stamps are differentiated. */
const SHARE = 1e-6;

/** A disturbance of one equation: its waveform, and the response of all unknowns to a unit of it. */
export interface RowInjection {
  signal: Float64Array;
  response: Float64Array;
}

/** What a relative change of one parameter does to the equations along a solution. */
export interface Injection {
  rows: RowInjection[];
  /** Change of a device's port current at fixed voltages, by port. */
  ports: { port: number; signal: Float64Array }[];
  /** Change of the voltage that drives the flux of a swinging choke, at fixed port voltage and current: that of its wire's drop. */
  drives: { port: number; signal: Float64Array }[];
  /** Relative change of the element's own resistance; 0 when it is no resistance or keeps it. */
  resistanceShare: number;
}

/** A hot element's own resistance as the quantity that changes. */
export interface HotOhms {
  hotOhms: string;
}

/** A direct current put into a point, one ampere of it. */
export interface PointAmpere {
  into: string;
}

/** What may be changed along a solution. */
export type Disturbance = ParameterRef | HotOhms | PointAmpere;

/** The element that a disturbance belongs to. */
export const elementOf = (reference: ParameterRef | HotOhms): string => ("hotOhms" in reference ? reference.hotOhms : reference.element);

function contributions(circuit: Circuit, reference: ParameterRef | HotOhms, waves: Waves): [low: Contribution, high: Contribution] {
  const id = elementOf(reference);
  const element = circuit.elements.get(id);
  if (element === undefined) throw new CircuitError("bad-value", `there is no element ${id} here`, [], [id]);
  const at = (factor: number): Contribution => {
    const ohms = new Map(circuit.conditions.ohms);
    let changed: Element = element;
    if ("hotOhms" in reference) ohms.set(id, ohms.get(id)! * factor);
    else {
      changed = scaleParameter(element, reference, factor);
      if (changed.kind === "filament") {
        ohms.set(id, filamentOhms(changed, waveFigures(waves.amps(id), waves.trajectory.weights, waves.stagesPerStep).rms));
      }
      if (changed.kind === "thermistor" && element.kind === "thermistor") {
        const rms = waveFigures(waves.amps(id), waves.trajectory.weights, waves.stagesPerStep).rms;
        const before = ohms.get(id)!;
        const atSameHeat = thermistorOhms(changed, thermistorKelvin(element, before));
        ohms.set(id, before * (atSameHeat / before) ** thermistorRelief(element, before, rms));
      }
    }
    return stampElement(circuit, changed, { ...circuit.conditions, ohms });
  };
  return [at(1 - SHARE), at(1 + SHARE)];
}

/**
 * Differentiates the stamps of one element with respect to the logarithm of a parameter, along a solution.
 *
 * @param reference a parameter, the resistance of a self-heated element as such, or a direct current put into a point
 */
export function injectionOf(circuit: Circuit, waves: Waves, reference: Disturbance): Injection {
  if ("into" in reference) return pointInjection(circuit, waves, reference);
  const [low, high] = contributions(circuit, reference, waves);
  const { trajectory } = waves;
  const reduction = waves.reductions[0]!;
  const per = 1 / (2 * SHARE);
  const signals = new Map<number, Float64Array>();
  const addTo = (row: number): Float64Array | undefined => {
    if (row < 0) return undefined;
    let signal = signals.get(row);
    if (signal === undefined) {
      signal = new Float64Array(trajectory.stages);
      signals.set(row, signal);
    }
    return signal;
  };
  high.stamps.values.forEach((value, k) => {
    const slope = (value - low.stamps.values[k]!) * per;
    if (slope === 0) return;
    const signal = addTo(high.stamps.rows[k]!)!;
    const wave = waves.row(high.stamps.columns[k]!);
    for (let stage = 0; stage < signal.length; stage++) signal[stage] = signal[stage]! - slope * wave[stage]!;
  });
  high.states.forEach((slot, k) => {
    const slope = (slot.coefficient - low.states[k]!.coefficient) * per * reduction.perSecond;
    if (slope === 0) return;
    const index = circuit.stateIndex.get(slot.id)!;
    const plus = addTo(slot.plus);
    const minus = addTo(slot.minus);
    const highWave = waves.row(slot.plus);
    const lowWave = waves.row(slot.minus);
    for (let stage = 0; stage < trajectory.stages; stage++) {
      const change = slope * (highWave[stage]! - lowWave[stage]! - trajectory.histories[stage * trajectory.states + index]!);
      if (plus !== undefined) plus[stage] = plus[stage]! - change;
      if (minus !== undefined) minus[stage] = minus[stage]! + change;
    }
  });
  high.constant.forEach(([row, value], k) => {
    const signal = addTo(row);
    const slope = (value - low.constant[k]![1]) * per;
    if (signal !== undefined) for (let stage = 0; stage < signal.length; stage++) signal[stage] = signal[stage]! + slope;
  });
  high.sines.forEach(([row, amplitude, hertz, phase], k) => {
    const signal = addTo(row);
    const slope = (amplitude - low.sines[k]![1]) * per;
    if (signal === undefined || reduction.perSecond === 0) return;
    for (let stage = 0; stage < signal.length; stage++) {
      signal[stage] = signal[stage]! + slope * Math.sin(2 * Math.PI * hertz * trajectory.times[stage]! + phase);
    }
  });
  const rows: RowInjection[] = [];
  const unit = new Float64Array(circuit.size);
  for (const [row, signal] of signals) {
    if (signal.every((value) => value === 0)) continue;
    unit.fill(0);
    unit[row] = 1;
    const response = new Float64Array(circuit.size);
    solveFactored(reduction.lu, unit, response);
    rows.push({ signal, response });
  }
  const id = elementOf(reference);
  const ohms = [low.resistances.get(id), high.resistances.get(id)];
  const resistanceShare = ohms[0] === undefined || ohms[1] === undefined || ohms[0] === 0 ? 0 : Math.log(ohms[1] / ohms[0]) * per;
  return { rows, ports: deviceSlopes(circuit, waves, low, high, per), drives: fluxDrives(circuit, waves, low, high, per), resistanceShare };
}

function pointInjection(circuit: Circuit, waves: Waves, { into }: PointAmpere): Injection {
  const row = circuit.rowIndex.get(`point ${into}`);
  if (row === undefined) throw new CircuitError("unknown-point", `there is no point ${into} here`, [into], []);
  const unit = new Float64Array(circuit.size);
  unit[row] = 1;
  const response = new Float64Array(circuit.size);
  solveFactored(waves.reductions[0]!.lu, unit, response);
  const signal = new Float64Array(waves.trajectory.stages).fill(1);
  return { rows: [{ signal, response }], ports: [], drives: [], resistanceShare: 0 };
}

/** Change of the port currents of a device at fixed port voltages. */
function deviceSlopes(circuit: Circuit, waves: Waves, low: Contribution, high: Contribution, per: number): Injection["ports"] {
  const out: Injection["ports"] = [];
  const { trajectory } = waves;
  const { perSecond } = waves.reductions[0]!;
  const total = circuit.ports.length;
  high.devices.forEach((device, k) => {
    const other = low.devices[k]!;
    const at = circuit.portIndex.get(device.id)!;
    const count = device.ports.length;
    const a = portScratch(count);
    const b = portScratch(count);
    const signals = device.ports.map(() => new Float64Array(trajectory.stages));
    for (let stage = 0; stage < trajectory.stages; stage++) {
      for (let j = 0; j < count; j++) {
        a.volts[j] = trajectory.portVolts[stage * total + at + j]!;
        b.volts[j] = a.volts[j]!;
      }
      if (device.flux === undefined || other.flux === undefined) {
        device.evaluate(a, 0);
        other.evaluate(b, 0);
      } else {
        const flux = trajectory.histories[stage * trajectory.states + circuit.stateIndex.get(device.id)!]!;
        device.flux.evaluate(a, 0, flux, perSecond);
        other.flux.evaluate(b, 0, flux, perSecond);
      }
      for (let j = 0; j < count; j++) signals[j]![stage] = (a.amps[j]! - b.amps[j]!) * per;
    }
    signals.forEach((signal, j) => {
      if (signal.some((value) => value !== 0)) out.push({ port: at + j, signal });
    });
  });
  return out;
}

function fluxDrives(circuit: Circuit, waves: Waves, low: Contribution, high: Contribution, per: number): Injection["drives"] {
  const out: Injection["drives"] = [];
  high.devices.forEach((device, k) => {
    const other = low.devices[k]!;
    if (device.flux === undefined || other.flux === undefined || device.flux.ohms === other.flux.ohms) return;
    const slope = (device.flux.ohms - other.flux.ohms) * per;
    const port = circuit.portIndex.get(device.id)!;
    out.push({ port, signal: waves.portAmps(port).map((amps) => -slope * amps) });
  });
  return out;
}
