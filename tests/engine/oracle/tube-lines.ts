/**
 * Tubes as behavioural sources. Equations: Koren, Glass Audio 8(5), 1996, with the factor 2 for a positive argument; the
 * screen law is the article's, with exponent 1.5. No grid current: a circuit whose grid comes above GRID_LIMIT_VOLTS is refused.
 */
import type { Pentode, Triode, VacuumDiode } from "@underchassis/calc";
import type { NetlistWriter } from "./netlist-writer.ts";

/** Highest grid voltage against the cathode at which grid current is still nothing (common-practice: it starts near -0.5 to 0 V). */
export const GRID_LIMIT_VOLTS = -0.3;

/** ln(1 + exp(x)) that does not overflow. */
function softplus(x: string): string {
  return `(max(${x},0)+ln(1+exp(-abs(${x}))))`;
}

/** i = perveance * v^1.5 for v > 0. */
export function vacuumDiodeLines(writer: NetlistWriter, element: VacuumDiode): void {
  const [a, k] = [writer.node(element.nodes[0]), writer.node(element.nodes[1])];
  const meter = writer.ammeter(a);
  writer.line(`${writer.fresh("b")} ${meter.node} ${k} i=${element.perveance}*pwr(max(v(${meter.node},${k}),0),1.5)`);
  writer.readings.set(element.id, { nodes: [a, k], current: meter.current });
}

export function triodeLines(writer: NetlistWriter, element: Triode): void {
  const { mu, ex, kg1, kp, kvb, vct = 0 } = element.parameters;
  const plate = writer.node(element.nodes.plate);
  const grid = writer.node(element.nodes.grid);
  const cathode = writer.node(element.nodes.cathode);
  const meter = writer.ammeter(plate);
  const vp = `max(v(${meter.node},${cathode}),0)`;
  const e1 = `(${vp}/${kp})*${softplus(`(${kp}*(${1 / mu}+(v(${grid},${cathode})+${vct})/sqrt(${kvb}+${vp}*${vp})))`)}`;
  const scale = (2 * (element.emission ?? 1)) / kg1;
  writer.line(`${writer.fresh("b")} ${meter.node} ${cathode} i=${scale}*pwr(${e1},${ex})`);
  writer.readings.set(element.id, { nodes: [plate, cathode], current: meter.current, grid: [grid, cathode] });
}

export function pentodeLines(writer: NetlistWriter, element: Pentode): void {
  const { mu, ex, kg1, kg2, kp, kvb, vct = 0 } = element.parameters;
  const plate = writer.node(element.nodes.plate);
  const screen = writer.node(element.nodes.screen);
  const grid = writer.node(element.nodes.grid);
  const cathode = writer.node(element.nodes.cathode);
  const meter = writer.ammeter(plate);
  const screenMeter = writer.ammeter(screen);
  const emission = element.emission ?? 1;
  const vp = `max(v(${meter.node},${cathode}),0)`;
  const vs = `max(v(${screenMeter.node},${cathode}),1e-6)`;
  const vg = `(v(${grid},${cathode})+${vct})`;
  const e1 = `(${vs}/${kp})*${softplus(`(${kp}*(${1 / mu}+${vg}/${vs}))`)}`;
  writer.line(`${writer.fresh("b")} ${meter.node} ${cathode} i=${(2 * emission) / kg1}*pwr(${e1},${ex})*atan(${vp}/${kvb})`);
  writer.line(`${writer.fresh("b")} ${screenMeter.node} ${cathode} i=${emission / kg2}*pwr(max(${vg}+${vs}/${mu},0),1.5)`);
  writer.readings.set(element.id, {
    nodes: [plate, cathode],
    current: meter.current,
    grid: [grid, cathode],
    electrodes: { screen: { nodes: [screen, cathode], current: screenMeter.current } },
  });
}
