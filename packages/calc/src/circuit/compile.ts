import type { Circuit, Conditions, Harmonic } from "./circuit.ts";
import { CircuitBuilder } from "./circuit-builder.ts";
import { elementPoints, isPresent } from "./element-points.ts";
import { fundamentalHertz } from "./fundamental.ts";
import type { Network } from "./network.ts";

/** Conductance in siemens that ties an island of points to the reference when the caller asks for it: insulation of 1 gigohm. */
const TIE_SIEMENS = 1e-9;

/** Adds up the sine sources by harmonic of the fundamental. */
function gatherHarmonics(sines: CircuitBuilder["sines"], hertz: number, size: number): Harmonic[] {
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
  const builder = new CircuitBuilder(network.reference);
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
