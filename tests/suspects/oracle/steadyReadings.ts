/** Mean volts, ripple and Thevenin resistance at the points of one network, from the simulator. */
import type { Element, Network } from "@underchassis/calc";
import type { NetlistWriter } from "../../engine/oracle/netlist-writer.ts";
import type { Trace } from "../../engine/oracle/simulator.ts";
import { ampsOf, figuresBetween, voltsBetween } from "../../engine/oracle/trace-figures.ts";
import { prepare } from "./prepare.ts";
import { Shooting, type Start } from "./shooting.ts";
import { theveninOhms } from "./thevenin.ts";

export interface PointReading {
  /** Mean against the reference, without a meter. */
  volts: number;
  /** Peak to peak. */
  ripple: number;
  /** What a meter's current makes the point fall by, in ohms. */
  ohms: number;
}

export interface SteadyReadings {
  points: ReadonlyMap<string, PointReading>;
  /** RMS amperes from the outlet. */
  lineAmps: number;
  /** Mean watts of every resistor. */
  watts: ReadonlyMap<string, number>;
  start: Start;
  runs: number;
  lit: Readonly<Record<string, boolean>>;
}

/** Every assignment of lit and dark to the gas regulator tubes, most lit first. */
function lightings(elements: readonly Element[]): Record<string, boolean>[] {
  const ids = elements.filter(({ kind }) => kind === "gas-regulator").map(({ id }) => id);
  return ids.reduce<Record<string, boolean>[]>(
    (all, id) => [true, false].flatMap((on) => all.map((each) => ({ ...each, [id]: on }))),
    [{}],
  );
}

/** A tube assumed lit carries its least current; a dark one sees less than its striking voltage. */
function agrees(elements: readonly Element[], exported: NetlistWriter, trace: Trace, lit: Readonly<Record<string, boolean>>): boolean {
  return elements.every((element) => {
    if (element.kind !== "gas-regulator") return true;
    const reading = exported.readings.get(element.id);
    if (reading === undefined) return false;
    if (lit[element.id]) return Math.min(...ampsOf(trace, reading.current)) > element.extinguishAmps;
    return Math.max(...voltsBetween(trace, ...reading.nodes)) < element.strikeVolts;
  });
}

/**
 * @param from a similar network's state to start from
 * @param careful see Shooting.settle
 * @throws Error when there is no steady state with every regulator tube in the state assumed
 */
export async function steadyReadings(network: Network, hertz: number, from: Start, careful = false): Promise<SteadyReadings> {
  const prepared = prepare(network, hertz);
  let runs = 0;
  for (const lit of lightings(prepared.elements)) {
    const shooting = new Shooting(prepared, hertz, lit);
    const settled = await shooting.settle(from, careful);
    runs += settled.runs;
    const { exported, trace } = settled;
    if (!agrees(prepared.elements, exported, trace, lit)) continue;
    const times = trace.get("time") ?? new Float64Array();
    const [first, last] = [times[0] ?? 0, times.at(-1) ?? 0];
    const over = (values: Float64Array) => figuresBetween(times, values, first, last);
    const figures = new Map([...exported.pointNodes].map(([point, node]) => [point, over(voltsBetween(trace, node, "0"))]));
    const means = new Map([...figures].map(([point, { mean }]) => [point, mean]));
    // A rectifier that waits at the peak for a load conducts as soon as a meter is one.
    const carries = (id: string): boolean => {
      const reading = exported.readings.get(id);
      if (reading === undefined) return false;
      const { max, min } = over(voltsBetween(trace, ...reading.nodes));
      return over(ampsOf(trace, reading.current)).mean > 1e-6 || max > -0.03 * Math.abs(min);
    };
    const ohms = theveninOhms(prepared, means, carries, lit);
    const points = new Map<string, PointReading>();
    for (const [point, { mean, max, min }] of figures) {
      if (point.endsWith(" inside")) continue;
      points.set(point, { volts: mean, ripple: max - min, ohms: ohms.get(point) ?? 0 });
    }
    const watts = new Map<string, number>();
    for (const element of network.elements) {
      const reading = exported.readings.get(element.id);
      if (element.kind !== "resistor" || reading === undefined) continue;
      watts.set(element.id, over(voltsBetween(trace, ...reading.nodes)).rms ** 2 / element.ohms);
    }
    const line = exported.readings.get("line");
    const lineAmps = line === undefined ? 0 : over(ampsOf(trace, line.current)).rms;
    return { points, lineAmps, watts, start: settled.start, runs, lit };
  }
  throw new Error("no state of the regulator tubes agrees with itself");
}
