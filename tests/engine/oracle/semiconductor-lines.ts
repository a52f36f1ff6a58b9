/** Junctions and gas tubes. A knee is a straight line with a corner: what its smoothing may cost is the comparison's business. */
import type { Diode, GasDiode, GasRegulator, Selenium, Zener } from "@underchassis/calc";
import type { NetlistWriter } from "./netlist-writer.ts";

/** The simulator's own junction model with the same constants; `reverseOhms` across the whole. */
export function diodeLines(writer: NetlistWriter, element: Diode): void {
  const [a, k] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  const meter = writer.ammeter(a);
  const model = writer.fresh("dm");
  writer.line(`.model ${model} d(is=${element.saturationAmps} n=${element.emission} rs=${element.ohms})`);
  writer.line(`${writer.fresh("d")} ${meter.node} ${k} ${model}`);
  if (element.reverseOhms !== undefined) writer.line(`${writer.fresh("r")} ${meter.node} ${k} ${element.reverseOhms}`);
  writer.readings.set(element.id, { nodes: [a, k], current: meter.current });
}

/** No current below `volts`, a straight slope above, between two nodes. */
function kneeLine(writer: NetlistWriter, from: string, to: string, volts: number, ohms: number): void {
  writer.line(`${writer.fresh("b")} ${from} ${to} i=max(v(${from},${to})-${volts},0)/${ohms}`);
}

export function seleniumLines(writer: NetlistWriter, element: Selenium): void {
  const [a, k] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  const meter = writer.ammeter(a);
  kneeLine(writer, meter.node, k, element.plates * element.kneeVoltsPerPlate, element.plates * element.ohmsPerPlate);
  if (element.reverseOhms !== undefined) writer.line(`${writer.fresh("r")} ${meter.node} ${k} ${element.reverseOhms}`);
  writer.readings.set(element.id, { nodes: [a, k], current: meter.current });
}

export function gasDiodeLines(writer: NetlistWriter, element: GasDiode): void {
  const [a, k] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  const meter = writer.ammeter(a);
  kneeLine(writer, meter.node, k, element.dropVolts, element.ohms);
  writer.readings.set(element.id, { nodes: [a, k], current: meter.current });
}

/** Lit: a knee at the operating voltage. Dark: not there. */
export function gasRegulatorLines(writer: NetlistWriter, element: GasRegulator, lit: boolean): void {
  const [a, k] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  if (!lit) {
    writer.readings.set(element.id, { nodes: [a, k], current: { from: "constant", amps: 0 } });
    return;
  }
  const meter = writer.ammeter(a);
  kneeLine(writer, meter.node, k, element.operatingVolts, element.slopeOhms);
  writer.readings.set(element.id, { nodes: [a, k], current: meter.current });
}

/** Reverse knee only: no circuit here uses a zener forward. */
export function zenerLines(writer: NetlistWriter, element: Zener): void {
  const [a, k] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  const meter = writer.ammeter(a);
  kneeLine(writer, k, meter.node, element.zenerVolts, element.slopeOhms);
  writer.readings.set(element.id, { nodes: [a, k], current: meter.current });
}
