import { type Element, elementPoints } from "@underchassis/calc";
import type { ChassisModel, CompiledNetwork, Life, Part } from "../model/index.ts";
import { exonerated } from "./exonerated.ts";
import type { Family, Member, Single } from "./family.ts";
import type { Fault, FaultKind } from "./fault.ts";
import { misreadOhms } from "./misread.ts";
import type { Priors } from "./priors.ts";

/** An element that faults are looked for in. */
interface Seen {
  element: Element;
  part: Part | undefined;
  id: string;
}

export interface Hypotheses {
  singles: Single[];
  families: Family[];
}

/** Values of a resistor as multiples of its own: dense where tolerance ends and drift begins. */
const RESISTOR_NODES = [0, 0.03, 0.1, 0.25, 0.5, 0.75, 1.35, 2, 3.5, 8, 30, Number.POSITIVE_INFINITY] as const;
/** Dense where a choke comes into resonance with what is left. */
const CAPACITY_NODES = [0, 0.02, 0.035, 0.06, 0.1, 0.3, 0.6, 1.5, 3, 10] as const;
const LEAK_NODES = [0.1, 100, 1e3, 3e3, 1e4, 3e4, 1e5, 3e5, 1e6, 5e6] as const;
const ESR_NODES = [5, 30, 150, 1000] as const;
const EMISSION_NODES = [0.1, 0.2, 0.35, 0.55, 0.8] as const;
const GAS_NODES = [3e5, 1e6, 3e6, 1e7, 3e7] as const;
const TURN_NODES = [0.005, 0.02, 0.06, 0.12, 0.2] as const;
const BRIDGE_NODES = [0.1, 300, 1e3, 3e3, 1e4, 5e4] as const;
const HEATER_LEAK_NODES = [1, 30, 100, 300, 1e3, 5e3] as const;
const LINE_NODES = [0.5, 0.7, 0.85, 1.15, 1.35] as const;
/** A bridge of solder, against one of charred board or dirt. common-practice, rough. */
const SOLDER_OHMS = 0.1;
const SOLDER_SHARE = 0.6;
const CONTACT_NODES = [0.3, 2, 10, 40, Number.POSITIVE_INFINITY] as const;

/**
 * Every single fault that the trade knows, of every part, lead and pair of points of a chassis.
 *
 * @param networks the compiled networks of the situations that readings were taken in, the fullest first
 */
export function enumerateFaults(model: ChassisModel, life: Life, networks: readonly CompiledNetwork[], priors: Priors): Hypotheses {
  const out: Hypotheses = { singles: [], families: [] };
  const seen = new Map<string, Seen>();
  for (const { network, origins } of networks) {
    for (const element of network.elements) {
      const origin = origins.get(element.id);
      if (origin === undefined || origin.aspect === "heater" || seen.has(element.id)) continue;
      seen.set(element.id, { element, part: model.parts.get(origin.part), id: origin.part });
    }
  }
  const points = [...new Set(networks.flatMap(({ network }) => network.elements.flatMap(elementPoints)))];
  const reference = networks[0]?.network.reference ?? model.reference;
  for (const { element, part, id } of seen.values()) {
    const clear = part === undefined ? new Set<FaultKind>() : exonerated(part, life);
    const collect = new Collector(out, part, id, element, clear, priors);
    ofElement(collect, element, part, points, reference, heaterPoint(id, networks));
  }
  rectifierTubes(out, [...seen.values()], points, life, priors);
  exchanges(out, [...seen.values()], life, priors);
  bridges(out, points, priors);
  return out;
}

class Collector {
  readonly part: Part | undefined;
  readonly #out: Hypotheses;
  readonly #id: string;
  readonly #element: Element;
  readonly #clear: ReadonlySet<FaultKind>;
  readonly #priors: Priors;

  constructor(out: Hypotheses, part: Part | undefined, id: string, element: Element, clear: ReadonlySet<FaultKind>, priors: Priors) {
    this.#out = out;
    this.part = part;
    this.#id = id;
    this.#element = element;
    this.#clear = clear;
    this.#priors = priors;
  }

  prior(kind: FaultKind): number {
    return this.#clear.has(kind) ? 0 : this.#priors.of(kind, this.part, this.#element);
  }

  single(kind: FaultKind, more: Partial<Fault> = {}, share = 1): void {
    const prior = this.prior(kind) * share;
    if (prior > 0) this.#out.singles.push({ fault: { kind, part: this.#id, element: this.#element.id, ...more }, prior });
  }

  family(
    parameter: NonNullable<Fault["parameter"]>,
    nominal: number,
    nodes: readonly number[],
    members: readonly [kind: FaultKind, at: Member["at"], share?: number][],
    by: Family["by"] = "value",
    more: Partial<Fault> = {},
  ): void {
    const kept = members.map(([kind, at, share = 1]) => ({ kind, at, prior: this.prior(kind) * share })).filter(({ prior }) => prior > 0);
    if (kept.length === 0) return;
    const base = { part: this.#id, element: this.#element.id, parameter, nominal, ...more };
    this.#out.families.push({ base, by, nodes, members: kept });
  }
}

function ofElement(
  collect: Collector,
  element: Element,
  part: Part | undefined,
  points: readonly string[],
  reference: string,
  heater: string | undefined,
): void {
  const times = (nodes: readonly number[], value: number) => nodes.map((node) => node * value);
  switch (element.kind) {
    case "resistor":
      ofResistor(collect, element.ohms, part);
      break;
    case "capacitor": {
      const { farads } = element;
      // Electrolytics are marked in plain figures, the others in colours and codes.
      const misread = part?.polarised === true ? 0.05 : 0.3;
      collect.family("farads", farads, times(CAPACITY_NODES, farads), [
        ["open", 0],
        ["lost-capacity", [0.02 * farads, 0.75 * farads]],
        ["wrong-value", 10 * farads, misread],
        ["wrong-value", 0.1 * farads, misread],
      ]);
      collect.family("leakOhms", element.leakOhms ?? Number.POSITIVE_INFINITY, LEAK_NODES, [
        ["short", 0.1],
        ["leaky", [1e3, 4e6]],
        ...(part?.polarised === true ? [["reversed", [500, 3e4]] as [FaultKind, Member["at"]]] : []),
      ]);
      collect.family("esrOhms", element.esrOhms ?? 0, ESR_NODES, [["high-esr", [8, 800]]]);
      break;
    }
    case "inductor":
      collect.single("open");
      collect.single("short");
      break;
    case "transformer":
      for (const winding of element.windings) {
        const id = `${element.id}.${winding.id}`;
        const share = 1 / element.windings.length;
        collect.single("open", { element: id }, share);
        collect.family("turns", 0, TURN_NODES, [["shorted-turns", [0.005, 0.2], share]], "shorted-turns", { element: id });
        for (const lead of ["0", "1"] as const) moves(collect, id, lead, winding.nodes[lead === "0" ? 0 : 1], winding.nodes, points, share);
      }
      return;
    case "vacuum-diode":
      collect.single("open");
      collect.single("short");
      collect.family("emission", 1, EMISSION_NODES, [["weak", [0.1, 0.75]]]);
      break;
    case "diode":
    case "selenium":
    case "gas-diode":
    case "zener":
    case "gas-regulator":
      collect.single("open");
      collect.single("short");
      collect.single("reversed");
      break;
    case "triode":
    case "pentode":
      collect.single("dead");
      collect.family("emission", 1, EMISSION_NODES, [["weak", [0.1, 0.75]]]);
      collect.family("gridOhms", Number.POSITIVE_INFINITY, GAS_NODES, [["gassy", [3e5, 3e7]]], "gassy");
      shortsBetween(collect, element.kind === "pentode", heater ?? reference);
      break;
    case "voltage-source":
      if (element.rmsVolts !== undefined) {
        const { rmsVolts } = element;
        collect.family("rmsVolts", rmsVolts, times(LINE_NODES, rmsVolts), [
          ["line-voltage", [0.5 * rmsVolts, 0.93 * rmsVolts], 0.7],
          ["line-voltage", [1.07 * rmsVolts, 1.3 * rmsVolts], 0.3],
        ]);
      }
      return;
    case "thermistor":
    case "filament":
      collect.single("open");
      collect.single("short");
      break;
    default:
      return;
  }
  for (const [lead, from] of Object.entries(element.nodes)) moves(collect, element.id, lead, from, Object.values(element.nodes), points);
}

function ofResistor(collect: Collector, ohms: number, part: Part | undefined): void {
  if (part !== undefined && part.kind !== "resistor" && part.kind !== "potentiometer") {
    // Contacts, fuses and loads that are written as resistances.
    if (part.kind === "load") return;
    collect.family("ohms", ohms, CONTACT_NODES, [
      ["open", Number.POSITIVE_INFINITY],
      // A contact that is worse burns: it does not stay so.
      ["drift-high", [0.3, 40]],
    ]);
    return;
  }
  collect.family(
    "ohms",
    ohms,
    RESISTOR_NODES.map((node) => node * ohms),
    [
      ["open", Number.POSITIVE_INFINITY],
      ["short", 0],
      ["drift-high", [1.22 * ohms, 8 * ohms]],
      ["drift-low", [0.12 * ohms, 0.8 * ohms]],
      ...misreadOhms(ohms).map(({ ohms: value, share }): [FaultKind, number, number] => ["wrong-value", value, share]),
    ],
  );
}

function shortsBetween(collect: Collector, screened: boolean, heater: string): void {
  const pairs = ["grid-cathode", ...(screened ? ["screen-grid", "plate-screen"] : ["plate-grid"])];
  for (const lead of pairs) collect.single("electrode-short", { lead }, 1 / (pairs.length + 1));
  const share = 1 / (pairs.length + 1);
  const more = { lead: "cathode-heater", to: heater };
  collect.family("ohms", Number.POSITIVE_INFINITY, HEATER_LEAK_NODES, [["electrode-short", [1, 5e3], share]], "electrode-short", more);
}

function moves(
  collect: Collector,
  element: string,
  lead: string,
  from: string,
  own: readonly string[],
  points: readonly string[],
  share = 1,
  more: Partial<Fault> = {},
): void {
  const targets = points.filter((point) => point !== from && !(own.length === 2 && own.includes(point)));
  for (const to of targets) collect.single("moved-lead", { element, lead, from, to, ...more }, share / targets.length);
}

/** The live end of a tube's heater in the networks. A tube of several units has one, under the bulb's own name. */
function heaterPoint(part: string, networks: readonly CompiledNetwork[]): string | undefined {
  for (const { network, origins } of networks)
    for (const element of network.elements) {
      const origin = origins.get(element.id);
      if (origin?.aspect !== "heater" || origin.part !== part) continue;
      return elementPoints(element).find((point) => point !== network.reference);
    }
  return undefined;
}

/** Sections of one rectifier tube fail together: no emission, or their common cathode's lead. */
function rectifierTubes(out: Hypotheses, seen: readonly Seen[], points: readonly string[], life: Life, priors: Priors): void {
  const tubes = new Map<string, { part: Part; sections: Extract<Element, { kind: "vacuum-diode" }>[] }>();
  for (const { element, part } of seen) {
    if (part === undefined || element.kind !== "vacuum-diode") continue;
    const tube = tubes.get(part.id) ?? { part, sections: [] };
    tube.sections.push(element);
    tubes.set(part.id, tube);
  }
  for (const { part, sections } of tubes.values()) {
    const [first, ...others] = sections;
    if (first === undefined) continue;
    const also = others.map(({ id }) => id);
    const collect = new Collector(out, part, part.id, first, exonerated(part, life), priors);
    const more = also.length === 0 ? {} : { also };
    collect.single("dead", more);
    if (also.length === 0) continue;
    collect.family("emission", 1, EMISSION_NODES, [["weak", [0.1, 0.75]]], "value", more);
    const [, cathode] = first.nodes;
    if (sections.every(({ nodes }) => nodes[1] === cathode)) moves(collect, first.id, "1", cathode, first.nodes, points, 1, more);
  }
}

/** Two parts of a kind that were put in each other's place. */
function exchanges(out: Hypotheses, seen: readonly Seen[], life: Life, priors: Priors): void {
  const like = seen.filter(({ element, part }) => part !== undefined && (element.kind === "resistor" || element.kind === "capacitor"));
  const free = like.filter(
    ({ part }) => part !== undefined && (part.kind === "resistor" || part.kind === "capacitor") && !exonerated(part, life).has("exchanged"),
  );
  const pairs = free.flatMap((one, index) =>
    free
      .slice(index + 1)
      .flatMap((other) => (one.element.kind === other.element.kind && differ(one.element, other.element) ? [[one, other] as const] : [])),
  );
  for (const [one, other] of pairs) {
    const prior = (priors.of("exchanged", one.part, one.element) * 2) / Math.max(1, free.length - 1);
    out.singles.push({ fault: { kind: "exchanged", part: one.id, element: one.element.id, with: other.element.id }, prior });
  }
}

function differ(one: Element, other: Element): boolean {
  const value = (element: Element) => (element.kind === "resistor" ? element.ohms : element.kind === "capacitor" ? element.farads : 0);
  return Math.abs(Math.log(value(one) / value(other))) > 0.15;
}

function bridges(out: Hypotheses, points: readonly string[], priors: Priors): void {
  const count = (points.length * (points.length - 1)) / 2;
  const prior = priors.bridge(points.length) / count;
  for (const [index, part] of points.entries())
    for (const to of points.slice(index + 1))
      out.families.push({
        base: { part, element: part, to, parameter: "ohms" },
        by: "bridge",
        nodes: BRIDGE_NODES,
        members: [
          { kind: "bridge", at: SOLDER_OHMS, prior: prior * SOLDER_SHARE },
          { kind: "bridge", at: [500, 5e4], prior: prior * (1 - SOLDER_SHARE) },
        ],
      });
}
