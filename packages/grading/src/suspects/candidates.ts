import { lineSide } from "../checks/shared/lineSide.ts";
import type { ChassisModel, CompiledNetwork, Life, Reading } from "../model/index.ts";
import { DEFAULT_METER } from "../resolve/defaults.ts";
import { type Observable, observableKey, observableOf } from "./observable.ts";

/** Most points that are offered for a measurement; the rest of a large chassis is left to the eye. */
const MOST_POINTS = 60;

/**
 * Measurements that a restorer can make next: ohms with the power off, then direct and ripple voltage in the conditions that were
 * read before. Points of the line side are not among them.
 */
export function candidateMeasurements(model: ChassisModel, life: Life, readings: readonly Reading[]): Observable[] {
  const taken = new Set(readings.map((reading) => observableKey(observableOf(reading))));
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
  const bench = benchPoints(model, cold, life);
  for (const at of bench) add({ quantity: "ohms", at, to: reference, condition: "cold", meterOhms, accuracy });
  for (const [at, to] of endsOf(cold, bench)) add({ quantity: "ohms", at, to, condition: "cold", meterOhms, accuracy });
  for (const condition of powered) {
    const lineVolts = readings.find((reading) => reading.condition === condition)?.lineVolts;
    const more = { to: reference, condition, meterOhms, accuracy, ...(lineVolts === undefined ? {} : { lineVolts }) };
    const compiled = model.compile({ life, condition, line: lineVolts ?? "actual" });
    for (const at of benchPoints(model, compiled, life)) {
      add({ quantity: "dc-volts", at, ...more });
      add({ quantity: "ripple-volts", at, ...more, accuracy: 3 * accuracy });
    }
  }
  return out;
}

/** Points of the network beyond the line's own conductors, each under one of its names. */
function benchPoints(model: ChassisModel, compiled: CompiledNetwork, life: Life): string[] {
  const { hot, neutral } = lineSide(model, life);
  const line = new Set([...hot.keys(), ...neutral.keys()].map((point) => compiled.pointOf(point)));
  const reference = compiled.network.reference;
  const names = new Map<string, string>();
  for (const point of model.points.keys()) {
    const name = compiled.pointOf(point);
    if (name !== undefined && name !== reference && !line.has(name) && !names.has(name)) names.set(name, point);
  }
  return [...names.values()].slice(0, MOST_POINTS);
}

/** Ends of two-lead parts that lie between two points of the chassis, neither of them the reference. */
function endsOf(compiled: CompiledNetwork, points: readonly string[]): [string, string][] {
  const bench = new Set(points.map((point) => compiled.pointOf(point)));
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
