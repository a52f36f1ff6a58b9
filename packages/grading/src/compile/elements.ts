import type { Element, ParameterRef, Tolerance, Winding } from "@underchassis/calc";
import type { Condition, Part, PartState, WindingSpec } from "../model/index.ts";
import {
  CONTACT_OHMS,
  SELENIUM_KNEE_VOLTS,
  SELENIUM_PLATE_VOLTS_AT_RATED,
  SELENIUM_REVERSE_SHARE,
  SELENIUM_RMS_VOLTS_PER_PLATE,
  SILICON_REVERSE_OHMS,
  THERMISTOR,
  WINDING_GUESS,
  WINDING_MEASURED,
  WINDING_VOLTS_SPREAD,
} from "../resolve/defaults.ts";
import { switchIsClosed } from "./presence.ts";

/** Collects the elements of a network, which part each stands for, and which of their values may be off. */
export interface ElementSink {
  point(name: string): string;
  add(element: Element, part: string, aspect?: string): void;
  uncertain(ref: ParameterRef, tolerance: Tolerance, part: string): void;
}

type Add = (sink: ElementSink, part: Part, state: PartState, condition: Condition) => void;

/** Wires and cords are merged into points before. */
const nothing: Add = () => undefined;

const addFuse: Add = (sink, part, state) => addSmall(sink, part, state, state.dcr?.value ?? CONTACT_OHMS);

const addSwitch: Add = (sink, part, state, condition) => {
  if (switchIsClosed(part, condition)) addSmall(sink, part, state, CONTACT_OHMS);
};

const ADD: Readonly<Record<Part["kind"], Add>> = {
  resistor: addResistor,
  potentiometer: addPotentiometer,
  capacitor: addCapacitor,
  inductor: addInductor,
  transformer: addTransformer,
  rectifier: addRectifier,
  tube: addTube,
  "regulator-tube": addRegulator,
  zener: addZener,
  fuse: addFuse,
  breaker: addFuse,
  switch: addSwitch,
  thermistor: addThermistor,
  lamp: addLamp,
  load: addLoad,
  battery: addBattery,
  cord: nothing,
  wire: nothing,
};

/** Adds the elements that stand for one part in one life and condition. */
export function addElements(sink: ElementSink, part: Part, state: PartState, condition: Condition): void {
  ADD[part.kind](sink, part, state, condition);
}

function pair(sink: ElementSink, state: PartState, first = "a", second = "b"): [string, string] | undefined {
  const [a, b] = [state.pins[first], state.pins[second]];
  return a === undefined || b === undefined ? undefined : [sink.point(a), sink.point(b)];
}

function addResistor(sink: ElementSink, part: Part, state: PartState): void {
  const nodes = pair(sink, state);
  if (nodes === undefined || state.main === undefined) return;
  const { value } = state.main;
  sink.add({ kind: "resistor", id: part.id, nodes, ohms: shorted(state) ?? value }, part.id);
  sink.uncertain({ element: part.id, parameter: "ohms" }, state.main.tolerance, part.id);
}

/** A part that measured shorted carries its remaining resistance as `leak`. */
function shorted(state: PartState): number | undefined {
  return state.leak !== undefined && state.leak.value < 1 ? state.leak.value : undefined;
}

/** Wiper at mid-track unless the job says more; its setting may be anywhere, which the window shows. */
function addPotentiometer(sink: ElementSink, part: Part, state: PartState): void {
  if (state.main === undefined) return;
  const { wiper } = state.pins;
  if (wiper === undefined) {
    addResistor(sink, part, state);
    return;
  }
  const halves = [pair(sink, state, "a", "wiper"), pair(sink, state, "wiper", "b")];
  for (const [index, nodes] of halves.entries()) {
    if (nodes === undefined) continue;
    const id = `${part.id}/${index === 0 ? "upper" : "lower"}`;
    sink.add({ kind: "resistor", id, nodes, ohms: state.main.value / 2 }, part.id, index === 0 ? "upper" : "lower");
    sink.uncertain({ element: id, parameter: "ohms" }, { minus: 0.5, plus: 0.5 }, part.id);
  }
}

function addCapacitor(sink: ElementSink, part: Part, state: PartState): void {
  const nodes = pair(sink, state);
  if (nodes === undefined || state.main === undefined) return;
  sink.add(
    {
      kind: "capacitor",
      id: part.id,
      nodes,
      farads: state.main.value,
      ...(state.esr === undefined ? {} : { esrOhms: state.esr.value }),
      ...(state.leak === undefined ? {} : { leakOhms: state.leak.value }),
    },
    part.id,
  );
  sink.uncertain({ element: part.id, parameter: "farads" }, state.main.tolerance, part.id);
  if (state.esr !== undefined) sink.uncertain({ element: part.id, parameter: "esrOhms" }, state.esr.tolerance, part.id);
  if (state.leak !== undefined) sink.uncertain({ element: part.id, parameter: "leakOhms" }, state.leak.tolerance, part.id);
}

function addInductor(sink: ElementSink, part: Part, state: PartState): void {
  const nodes = pair(sink, state);
  if (nodes === undefined || state.main === undefined) return;
  const short = shorted(state);
  if (short !== undefined) {
    addSmall(sink, part, state, short);
    return;
  }
  sink.add(
    { kind: "inductor", id: part.id, nodes, henries: state.main.value, ...(state.dcr === undefined ? {} : { dcrOhms: state.dcr.value }) },
    part.id,
  );
  sink.uncertain({ element: part.id, parameter: "henries" }, state.main.tolerance, part.id);
  if (state.dcr !== undefined) sink.uncertain({ element: part.id, parameter: "dcrOhms" }, state.dcr.tolerance, part.id);
}

function addTransformer(sink: ElementSink, part: Part, state: PartState): void {
  const specs = state.windings ?? [];
  const primary = primaryOf(specs);
  if (primary === undefined) return;
  const windings: Winding[] = [];
  const unsure: [string, Tolerance][] = [];
  for (const spec of [primary, ...specs.filter((other) => other !== primary)]) {
    const turns = spec === primary ? spec.ratedVolts : openVolts(spec, primary);
    const [start, middle, end] = spec.points;
    if (start === undefined || middle === undefined) continue;
    const halves: [string, string, string][] =
      end === undefined
        ? [[spec.id, start, middle]]
        : [
            [`${spec.id}-1`, start, middle],
            [`${spec.id}-2`, middle, end],
          ];
    for (const [id, from, to] of halves) {
      windings.push({ id, nodes: [sink.point(from), sink.point(to)], turns, ohms: spec.ohms / halves.length });
      unsure.push([`${id}.ohms`, spec.ohmsFrom === "measurement" ? WINDING_MEASURED : WINDING_GUESS]);
      if (spec !== primary) unsure.push([`${id}.turns`, { minus: WINDING_VOLTS_SPREAD, plus: WINDING_VOLTS_SPREAD }]);
    }
  }
  sink.add({ kind: "transformer", id: part.id, windings }, part.id);
  for (const [parameter, tolerance] of unsure) sink.uncertain({ element: part.id, parameter }, tolerance, part.id);
}

/** The winding called primary, else the first. */
export function primaryOf(windings: readonly WindingSpec[]): WindingSpec | undefined {
  return windings.find((winding) => /primary/.test(winding.id)) ?? windings[0];
}

/**
 * Open-circuit RMS volts of one side of a winding at the primary's design voltage. A rating with a current is a voltage under
 * that load, so the drop in the winding and in the reflected primary is added; a rating without a current is taken as it stands.
 */
export function openVolts(winding: WindingSpec, primary: WindingSpec): number {
  if (winding.openVolts !== undefined) return winding.openVolts;
  if (winding.ratedAmps === undefined) return winding.ratedVolts;
  const ratio = winding.ratedVolts / primary.ratedVolts;
  const side = winding.centerTapped ? winding.ohms / 2 : winding.ohms;
  return winding.ratedVolts + winding.ratedAmps * (side + ratio * ratio * primary.ohms);
}

function addRectifier(sink: ElementSink, part: Part, state: PartState): void {
  const { device } = state;
  if (device === undefined) return;
  const short = shorted(state);
  const paths: [string, [string, string] | undefined][] =
    state.pins.cathode === undefined
      ? [["main", pair(sink, state)]]
      : ["plate", "plate-1", "plate-2"]
          .filter((pin) => state.pins[pin] !== undefined)
          .map((pin) => [pin, pair(sink, state, pin, "cathode")]);
  for (const [aspect, nodes] of paths) {
    if (nodes === undefined) continue;
    const id = aspect === "main" ? part.id : `${part.id}/${aspect}`;
    if (short !== undefined) {
      sink.add({ kind: "resistor", id, nodes, ohms: short }, part.id, aspect);
      continue;
    }
    switch (device.kind) {
      case "vacuum-diode":
        sink.add({ kind: "vacuum-diode", id, nodes, perveance: device.perveance * (state.emission ?? 1) }, part.id, aspect);
        sink.uncertain({ element: id, parameter: "perveance" }, { minus: device.spread, plus: device.spread }, part.id);
        break;
      case "gas-diode":
        sink.add({ kind: "gas-diode", id, nodes, dropVolts: device.dropVolts, ohms: device.ohms }, part.id, aspect);
        break;
      case "selenium":
        sink.add(
          {
            kind: "selenium",
            id,
            nodes,
            plates: device.plates,
            kneeVoltsPerPlate: device.kneeVoltsPerPlate,
            ohmsPerPlate: device.ohmsPerPlate,
            reverseOhms: seleniumReverseOhms(device),
          },
          part.id,
          aspect,
        );
        break;
      case "silicon":
        sink.add(
          {
            kind: "diode",
            id,
            nodes,
            saturationAmps: device.saturationAmps,
            emission: device.emission,
            ohms: device.ohms,
            reverseOhms: SILICON_REVERSE_OHMS,
          },
          part.id,
          aspect,
        );
        break;
      default:
        break; // an amplifier tube wired as a rectifier is not modelled
    }
  }
}

/** Rated volts over leakage. The slope of a plate tells its rated current; without leakage an unloaded doubler has no steady state. */
function seleniumReverseOhms({ plates, ohmsPerPlate }: { plates: number; ohmsPerPlate: number }): number {
  const ratedAmps = (SELENIUM_PLATE_VOLTS_AT_RATED - SELENIUM_KNEE_VOLTS) / ohmsPerPlate;
  return (plates * SELENIUM_RMS_VOLTS_PER_PLATE) / (SELENIUM_REVERSE_SHARE * ratedAmps);
}

function addTube(sink: ElementSink, part: Part, state: PartState): void {
  const { device, pins } = state;
  if (part.driven === true) return;
  const emission = state.emission === undefined ? {} : { emission: state.emission };
  const [plate, grid, cathode, screen] = [pins.plate, pins.grid, pins.cathode, pins.screen].map((point) =>
    point === undefined ? undefined : sink.point(point),
  );
  if (plate === undefined || cathode === undefined) return;
  if (device?.kind === "triode" && grid !== undefined) {
    sink.add({ kind: "triode", id: part.id, nodes: { plate, grid, cathode }, parameters: device.parameters, ...emission }, part.id);
  } else if (device?.kind === "pentode" && grid !== undefined) {
    sink.add(
      {
        kind: "pentode",
        id: part.id,
        nodes: { plate, screen: screen ?? plate, grid, cathode },
        parameters: device.parameters,
        ...emission,
      },
      part.id,
    );
  } else if (device?.kind === "vacuum-diode") {
    sink.add({ kind: "vacuum-diode", id: part.id, nodes: [plate, cathode], perveance: device.perveance * (state.emission ?? 1) }, part.id);
    sink.uncertain({ element: part.id, parameter: "perveance" }, { minus: device.spread, plus: device.spread }, part.id);
    return;
  } else return;
  sink.uncertain({ element: part.id, parameter: "emission" }, { minus: device.spread, plus: device.spread }, part.id);
}

function addRegulator(sink: ElementSink, part: Part, state: PartState): void {
  const { device } = state;
  const nodes = pair(sink, state) ?? pair(sink, state, "anode", "cathode");
  if (device?.kind !== "gas-regulator" || nodes === undefined) return;
  const { kind, strikeVolts, operatingVolts, slopeOhms, extinguishAmps } = device;
  sink.add({ kind, id: part.id, nodes, strikeVolts, operatingVolts, slopeOhms, extinguishAmps }, part.id);
  sink.uncertain({ element: part.id, parameter: "operatingVolts" }, { minus: 0.05, plus: 0.05 }, part.id);
}

function addZener(sink: ElementSink, part: Part, state: PartState): void {
  const nodes = pair(sink, state) ?? pair(sink, state, "anode", "cathode");
  if (nodes === undefined || state.main === undefined) return;
  sink.add({ kind: "zener", id: part.id, nodes, zenerVolts: state.main.value, slopeOhms: Math.max(1, state.main.value * 0.5) }, part.id);
  sink.uncertain({ element: part.id, parameter: "zenerVolts" }, state.main.tolerance, part.id);
}

function addSmall(sink: ElementSink, part: Part, state: PartState, ohms: number): void {
  const nodes = pair(sink, state);
  if (nodes !== undefined) sink.add({ kind: "resistor", id: part.id, nodes, ohms }, part.id);
}

/** Thermal figures of the disc are generic where the marking gives only cold resistance, steady current and energy. */
function addThermistor(sink: ElementSink, part: Part, state: PartState): void {
  const nodes = pair(sink, state);
  if (nodes === undefined || state.main === undefined) return;
  const r25Ohms = state.main.value;
  const ratedAmps = state.ratedAmps === undefined || state.ratedAmps <= 0 ? 1 : state.ratedAmps;
  const deltaWattsPerKelvin = (ratedAmps * ratedAmps * r25Ohms * THERMISTOR.hotShareAtRated) / THERMISTOR.bodyRiseKelvin;
  sink.add(
    {
      kind: "thermistor",
      id: part.id,
      nodes,
      r25Ohms,
      betaKelvin: THERMISTOR.betaKelvin,
      deltaWattsPerKelvin,
      tauSeconds: THERMISTOR.tauSeconds,
    },
    part.id,
  );
}

function addLamp(sink: ElementSink, part: Part, state: PartState): void {
  const nodes = pair(sink, state);
  const volts = state.ratedVolts;
  const amps = state.ratedAmps ?? (state.ratedWatts === undefined || volts === undefined ? undefined : state.ratedWatts / volts);
  if (nodes === undefined || volts === undefined || amps === undefined) return;
  // from-memory: tungsten at working temperature has about ten times its cold resistance.
  sink.add({ kind: "filament", id: part.id, nodes, coldOhms: volts / amps / 10, ratedOhms: volts / amps, ratedAmps: amps }, part.id);
}

function addLoad(sink: ElementSink, part: Part, state: PartState, condition: Condition): void {
  const nodes = pair(sink, state);
  const byRole = part.stage === undefined || part.role === undefined ? undefined : condition.loads[`${part.stage}.${part.role}`];
  const load = condition.loads[part.name] ?? byRole ?? state.load;
  if (nodes === undefined || load === undefined) return;
  if ("ohms" in load) sink.add({ kind: "resistor", id: part.id, nodes, ohms: load.ohms }, part.id);
  else sink.add({ kind: "current-source", id: part.id, nodes, amps: load.amps }, part.id);
  // common-practice: what a stage draws is known to about a fifth.
  sink.uncertain({ element: part.id, parameter: "ohms" in load ? "ohms" : "amps" }, { minus: 0.2, plus: 0.2 }, part.id);
}

function addBattery(sink: ElementSink, part: Part, state: PartState): void {
  const nodes = pair(sink, state);
  if (nodes === undefined || state.main === undefined) return;
  sink.add({ kind: "voltage-source", id: part.id, nodes, dcVolts: state.main.value }, part.id);
  sink.uncertain({ element: part.id, parameter: "dcVolts" }, state.main.tolerance, part.id);
}
