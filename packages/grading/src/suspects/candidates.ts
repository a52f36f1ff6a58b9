import type { Element } from "@underchassis/calc";
import type { ChassisModel, CompiledNetwork, Life, Reading } from "../model/index.ts";
import { DEFAULT_METER } from "../resolve/defaults.ts";
import { type Observable, observableKey } from "./observable.ts";

/** Most points that are offered for a measurement; the rest of a large chassis is left to the eye. */
const MOST_POINTS = 60;

/**
 * Measurements that a restorer can make next: ohms with the power off, then direct and ripple voltage in the conditions that were
 * read before. Points of the line side are not among them.
 */
export function candidateMeasurements(model: ChassisModel, life: Life, readings: readonly Reading[]): Observable[] {
  const taken = new Set(readings.map((reading) => observableKey({ ...reading, meterOhms: 0 } as unknown as Observable)));
  const { inputOhms: meterOhms, accuracy } = DEFAULT_METER;
  const powered = [...new Set(readings.map(({ condition }) => condition))].filter((id) => model.conditions.get(id)?.powered === true);
  if (powered.length === 0) powered.push(model.conditions.has("operating") ? "operating" : "tubes-out");
  const cold = model.compile({ life, condition: "cold", line: "actual" });
  const out: Observable[] = [];
  const add = (observable: Observable) => {
    const key = observableKey(observable);
    if (taken.has(key)) return;
    taken.add(key);
    out.push(observable);
  };
  const reference = model.reference;
  for (const at of benchPoints(model, cold)) add({ quantity: "ohms", at, to: reference, condition: "cold", meterOhms, accuracy });
  for (const [at, to] of endsOf(model, cold)) add({ quantity: "ohms", at, to, condition: "cold", meterOhms, accuracy });
  for (const condition of powered) {
    const lineVolts = readings.find((reading) => reading.condition === condition)?.lineVolts;
    const more = { to: reference, condition, meterOhms, accuracy, ...(lineVolts === undefined ? {} : { lineVolts }) };
    const compiled = model.compile({ life, condition, line: lineVolts ?? "actual" });
    for (const at of benchPoints(model, compiled)) {
      add({ quantity: "dc-volts", at, ...more });
      add({ quantity: "ripple-volts", at, ...more, accuracy: 3 * accuracy });
    }
  }
  return out;
}

/** Points of the network beyond the line side, each under one of its names. */
function benchPoints(model: ChassisModel, compiled: CompiledNetwork): string[] {
  const line = lineSide(
    compiled.network.elements,
    new Set([model.line.hot, model.line.neutral].flatMap((point) => compiled.pointOf(point) ?? [])),
  );
  const reference = compiled.network.reference;
  const names = new Map<string, string>();
  for (const point of model.points.keys()) {
    const name = compiled.pointOf(point);
    if (name !== undefined && name !== reference && !line.has(name) && !names.has(name)) names.set(name, point);
  }
  return [...names.values()].slice(0, MOST_POINTS);
}

/** What direct current reaches from the line without a transformer in between; all of it in a set without one. */
function lineSide(elements: readonly Element[], from: Set<string>): ReadonlySet<string> {
  const reached = new Set(from);
  for (let grew = true; grew; ) {
    grew = false;
    for (const element of elements) {
      if (element.kind === "capacitor" || element.kind === "transformer") continue;
      const points = Object.values(element.nodes) as string[];
      if (points.length !== 2 || !points.some((point) => reached.has(point)) || points.every((point) => reached.has(point))) continue;
      // A set without a transformer hangs on the line as a whole; its points are read with an isolating transformer.
      if (element.kind !== "resistor" && element.kind !== "voltage-source" && element.kind !== "thermistor" && element.kind !== "filament")
        continue;
      for (const point of points) reached.add(point);
      grew = true;
    }
  }
  return reached;
}

/** Ends of two-lead parts that lie between two points of the chassis, neither of them the reference. */
function endsOf(model: ChassisModel, compiled: CompiledNetwork): [string, string][] {
  const bench = new Set(benchPoints(model, compiled).map((point) => compiled.pointOf(point)));
  const pairs = new Map<string, [string, string]>();
  for (const element of compiled.network.elements) {
    const spans = element.kind === "transformer" ? element.windings.map(({ nodes }) => nodes) : [Object.values(element.nodes) as string[]];
    for (const span of spans) {
      const [a = "", b = ""] = span;
      if (span.length !== 2 || a === b || !bench.has(a) || !bench.has(b)) continue;
      pairs.set([a, b].sort().join("|"), [a, b]);
    }
  }
  return [...pairs.values()].slice(0, MOST_POINTS);
}
