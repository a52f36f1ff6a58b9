import { type Element, elementPoints } from "@underchassis/calc";
import type { CompiledNetwork, Condition, ElementOrigin, Life, Part, PartState, Situation } from "../model/index.ts";
import { LINE_DURING_READING, STACK_LEAK } from "../resolve/defaults.ts";
import type { ChassisData } from "../resolve/resolveJob.ts";
import { addElements, type ElementSink } from "./elements.ts";
import { addHeaters } from "./heaters.ts";
import { floatingWindings, stackedCapacitors, TIE_OHMS } from "./islands.ts";
import { isIn } from "./presence.ts";
import { Wires } from "./wires.ts";

type Uncertain = CompiledNetwork["uncertain"][number];

/** Element id of the line voltage source. */
export const LINE = "line";

/**
 * One netlist of a chassis in one life and condition. Wires and cords are merged into points, parts that are absent, pulled or
 * switched off are not there at all.
 *
 * @param lineVolts RMS voltage of the outlet
 * @param options a meter between two points; a part to be taken as it was found
 */
export function compile(
  data: ChassisData,
  life: Life,
  condition: Condition,
  lineVolts: number,
  options: { meter?: Situation["meter"]; revert?: Situation["revert"] } = {},
): CompiledNetwork {
  const all = [...data.parts.values()].map((part) => ({ part, state: part.lives[part.id === options.revert ? "found" : life] }));
  const present = all.filter(({ part, state }) => state.present && isIn(part, state, condition));
  const wires = joinWires(data, all);
  const elements: Element[] = [];
  const origins = new Map<string, ElementOrigin>();
  const uncertain: Uncertain[] = [];
  const notes: string[] = [];
  const shorted: { part: string; point: string }[] = [];
  const sink: ElementSink = {
    point: (name) => wires.find(name),
    add(element, part, aspect = "main") {
      // A source with both leads on one point is a short, and stays for the solver to name.
      if (
        element.kind !== "voltage-source" &&
        "nodes" in element &&
        Array.isArray(element.nodes) &&
        element.nodes[0] === element.nodes[1]
      ) {
        notes.push(`${part}: both leads are on ${element.nodes[0]}; it has no effect`);
        shorted.push({ part, point: String(element.nodes[0]) });
        return;
      }
      elements.push(element);
      origins.set(element.id, { part, aspect });
    },
    uncertain(ref, { minus, plus }, part) {
      if ((minus > 0 || plus > 0) && origins.has(ref.element)) uncertain.push({ ref, minus, plus, part });
    },
  };
  for (const { part, state } of present) addElements(sink, part, state, condition);
  if (condition.powered) {
    addHeaters(
      sink,
      present,
      present.flatMap(({ state }) => state.windings ?? []),
    );
    addLine(data, sink, elements, lineVolts, uncertain);
    const reference = wires.find(data.reference);
    for (const id of stackedCapacitors(elements, reference)) leak(elements, id, uncertain);
    for (const point of floatingWindings(elements, reference)) {
      elements.push({ kind: "resistor", id: `tie ${point}`, nodes: [point, reference], ohms: TIE_OHMS });
      notes.push(`${point}: no path to ${data.reference}, tied to it through ${TIE_OHMS / 1e6} Mohm`);
    }
  }
  const { meter } = options;
  if (meter !== undefined)
    elements.push({ kind: "voltmeter", id: "meter", nodes: [wires.find(meter.from), wires.find(meter.to)], ohms: meter.ohms });
  const touched = new Set(elements.flatMap(elementPoints));
  const reference = wires.find(data.reference);
  return {
    network: { elements, reference },
    origins,
    uncertain,
    notes,
    shorted,
    pointOf(point) {
      const name = wires.find(point);
      return touched.has(name) || name === reference ? name : undefined;
    },
  };
}

function joinWires(data: ChassisData, all: readonly { part: Part; state: PartState }[]): Wires {
  const wires = new Wires(data.reference);
  // The panel joins neutral and earth, whatever the set does.
  if (data.points.has(data.line.neutral) && data.points.has(data.line.earth)) wires.join(data.line.neutral, data.line.earth);
  for (const [a, b] of data.joins) wires.join(a, b);
  for (const { part, state } of all) {
    const { a, b } = state.pins;
    if (part.joinedWhenAbsent && !state.present && state.open === undefined && a !== undefined && b !== undefined) wires.join(a, b);
    if (!state.present) continue;
    const { pins } = state;
    if (part.kind === "wire" && pins.a !== undefined && pins.b !== undefined) wires.join(pins.a, pins.b);
    if (part.kind === "cord") {
      for (const conductor of state.earthed === true ? ["hot", "neutral", "earth"] : ["hot", "neutral"]) {
        const [outer, inner] = [pins[`${conductor}-in`], pins[`${conductor}-out`]];
        if (outer !== undefined && inner !== undefined) wires.join(outer, inner);
      }
    }
  }
  return wires;
}

function addLine(data: ChassisData, sink: ElementSink, elements: Element[], lineVolts: number, uncertain: Uncertain[]): void {
  const [hot, neutral] = [sink.point(data.line.hot), sink.point(data.line.neutral)];
  const reached = elements.some((element) => elementPoints(element).includes(hot));
  if (!reached || lineVolts === 0) return;
  sink.add({ kind: "voltage-source", id: LINE, nodes: [hot, neutral], rmsVolts: lineVolts, hertz: data.line.hertz }, LINE);
  uncertain.push({ ref: { element: LINE, parameter: "rmsVolts" }, minus: LINE_DURING_READING, plus: LINE_DURING_READING, part: LINE });
}

/** Gives a capacitor of a stack the leakage that decides its share. */
function leak(elements: Element[], id: string, uncertain: Uncertain[]): void {
  const index = elements.findIndex((element) => element.id === id);
  const element = elements[index];
  if (element?.kind !== "capacitor") return;
  elements[index] = { ...element, leakOhms: 1 / (STACK_LEAK.ampsPerFaradVolt * element.farads) };
  uncertain.push({ ref: { element: id, parameter: "leakOhms" }, minus: STACK_LEAK.spread, plus: STACK_LEAK.spread, part: id });
}
