/** Draws faults over all kinds, evenly by kind, then evenly over the parts that can have it. */
import type { Element, Network } from "@underchassis/calc";
import type { ChassisModel } from "../../../packages/grading/src/model/index.ts";
import { pointsOf } from "../oracle/prepare.ts";
import type { Random } from "../random.ts";
import { ownElements } from "./applySeededFault.ts";
import { misreadFactors } from "./misreadFactors.ts";
import type { SeededFault, SeededKind } from "./seededFault.ts";
import { heaterPoint } from "./tubeFaults.ts";

/** The parts of one chassis as the drawing sees them. */
export interface Ground {
  resistors: readonly Named<"resistor">[];
  capacitors: readonly Named<"capacitor">[];
  coils: readonly Named<"inductor">[];
  polarised: ReadonlySet<string>;
  /** Rectifiers with the names of their sections; one without a name for a single diode. */
  rectifiers: readonly { part: string; dry: boolean; sections: readonly string[] }[];
  tubes: readonly Extract<Element, { kind: "triode" | "pentode" }>[];
  regulators: readonly string[];
  /** High-voltage and signal windings that can open or short without a heater going dark. */
  windings: readonly { part: string; winding: string; half: boolean }[];
  fuses: readonly string[];
  points: readonly string[];
  network: Network;
}
type Named<K extends Element["kind"]> = Extract<Element, { kind: K }>;

const HEATER = /heater|filament/;

/** @param network the chassis at work */
export function groundOf(model: ChassisModel, network: Network): Ground {
  const partKind = (id: string): string | undefined => model.parts.get(id)?.kind;
  const of = <K extends Element["kind"]>(kind: K, part: string): Named<K>[] =>
    network.elements.filter((element): element is Named<K> => element.kind === kind && partKind(element.id) === part);
  const rectifiers = [...model.parts.values()]
    .filter(({ kind }) => kind === "rectifier")
    .map(({ id, lives }) => ({
      part: id,
      dry: lives.restored.heater === undefined,
      sections: ownElements(network, id).map((element) => element.id.split("/")[1] ?? ""),
    }));
  const windings = network.elements.flatMap((element) =>
    element.kind !== "transformer"
      ? []
      : element.windings
          .slice(1)
          .filter(({ id }) => !HEATER.test(id))
          .map(({ id }) => ({ part: element.id, winding: id, half: /-[12]$/.test(id) })),
  );
  return {
    resistors: of("resistor", "resistor"),
    capacitors: of("capacitor", "capacitor"),
    coils: of("inductor", "inductor"),
    polarised: new Set([...model.parts.values()].filter(isElectrolytic).map(({ id }) => id)),
    rectifiers,
    tubes: network.elements.filter((element) => element.kind === "triode" || element.kind === "pentode"),
    regulators: of("gas-regulator", "regulator-tube").map(({ id }) => id),
    windings,
    fuses: of("resistor", "fuse").map(({ id }) => id),
    points: [...new Set(network.elements.flatMap(pointsOf))].sort(),
    network,
  };
}

const isElectrolytic = ({ kind, lives }: { kind: string; lives: { restored: { marking?: unknown } } }): boolean =>
  kind === "capacitor" && JSON.stringify(lives.restored.marking ?? "").includes("electrolytic");

const idsOf = (elements: readonly { id: string }[]): string[] => elements.map(({ id }) => id);

/** One fault of a kind; undefined when the chassis has no part for it. */
export function drawFault(kind: SeededKind, ground: Ground, random: Random): SeededFault | undefined {
  const one = <T>(items: readonly T[]): T | undefined => (items.length === 0 ? undefined : random.pick(items));
  const onPart = (part: string | undefined, rest: () => Partial<SeededFault> = () => ({})): SeededFault | undefined =>
    part === undefined ? undefined : { kind, part, ...rest() };
  const section = (each: Ground["rectifiers"][number]): Partial<SeededFault> => {
    const lead = random.pick(each.sections);
    return lead === "" ? {} : { lead };
  };
  const resistors = idsOf(ground.resistors);
  const capacitors = idsOf(ground.capacitors);
  const coils = idsOf(ground.coils);
  const electrolytics = capacitors.filter((id) => ground.polarised.has(id));
  switch (kind) {
    case "open": {
      const windings = ground.windings.map(({ part, winding }) => ({ kind, part, lead: winding }));
      const rectifiers = ground.rectifiers.map((each) => ({ kind, part: each.part, ...section(each) }));
      const plain = [...resistors, ...coils, ...ground.fuses, ...ground.regulators].map((part) => ({ kind, part }));
      return one([one(plain), one(plain), one([...windings, ...rectifiers]) ?? one(plain)]);
    }
    case "short": {
      const rectifiers = ground.rectifiers.map((each) => ({ kind, part: each.part, ...section(each) }));
      return one([
        ...resistors.map((part) => ({ kind, part })),
        ...[...capacitors, ...capacitors, ...coils].map((part) => ({ kind, part })),
        ...rectifiers,
      ]);
    }
    case "drift-high":
      return onPart(one(resistors), () => ({ factor: random.between(1.3, 5) }));
    case "drift-low":
      return onPart(one(resistors), () => ({ factor: random.between(0.15, 0.75) }));
    case "leaky":
      return onPart(one(capacitors), () => ({ ohms: random.logBetween(2e3, 2e6) }));
    case "lost-capacity":
      return onPart(one([...electrolytics, ...electrolytics, ...capacitors]), () => ({ factor: random.logBetween(0.02, 0.5) }));
    case "high-esr":
      return onPart(one(electrolytics), () => ({ ohms: random.logBetween(15, 400) }));
    case "reversed": {
      const diodes = ground.rectifiers.filter(({ dry, sections }) => dry && sections.length === 1).map(({ part }) => ({ kind, part }));
      const cans = electrolytics.map((part) => ({ kind, part, ohms: random.logBetween(500, 2e4) }));
      return one([one(cans) ?? one(diodes), one(diodes) ?? one(cans)]);
    }
    case "wrong-value": {
      const part = one(ground.resistors);
      return part === undefined ? undefined : { kind, part: part.id, factor: random.pick(misreadFactors(part.ohms)) };
    }
    case "exchanged":
      return exchange(ground, random);
    case "moved-lead":
      return move(ground, random);
    case "bridge": {
      const [part, to] = random.shuffle(ground.points);
      return part === undefined || to === undefined
        ? undefined
        : { kind, part, to, ohms: random.next() < 0.5 ? 0.5 : random.logBetween(1e3, 2e4) };
    }
    case "dead":
      return onPart(one([...idsOf(ground.tubes), ...ground.rectifiers.filter(({ dry }) => !dry).map(({ part }) => part)]));
    case "weak": {
      const hot = ground.rectifiers.filter(({ dry }) => !dry);
      const rectifiers = hot.map((each) => ({ kind, part: each.part, ...(random.next() < 0.5 ? section(each) : {}) }));
      const tubes = ground.tubes.map(({ id }) => ({ kind, part: id }));
      const chosen = one<SeededFault>([...tubes, ...rectifiers]);
      return chosen === undefined ? undefined : { ...chosen, factor: random.between(0.3, 0.6) };
    }
    case "gassy":
      return onPart(one(idsOf(ground.tubes.filter(({ nodes }) => nodes.grid !== ground.network.reference))), () => ({
        ohms: random.logBetween(5e5, 5e6),
      }));
    case "electrode-short": {
      const tube = one(ground.tubes);
      if (tube === undefined) return undefined;
      const heated = heaterPoint(ground.network, tube.id) !== undefined && tube.nodes.cathode !== ground.network.reference;
      if (heated && random.next() < 0.5) return { kind, part: tube.id, lead: "heater-cathode", ohms: random.logBetween(10, 2e3) };
      return { kind, part: tube.id, lead: "grid-cathode", ohms: 0.5 };
    }
    case "shorted-turns": {
      const winding = one(ground.windings);
      return winding === undefined ? undefined : { kind, part: winding.part, lead: winding.winding, factor: random.logBetween(0.01, 0.15) };
    }
    case "line-voltage":
      return { kind, part: "line", factor: random.pick([0.8, 1.15]) };
  }
}

/** Two parts of one kind whose values differ by a quarter and more, and by no more than a helper would overlook. */
function exchange(ground: Ground, random: Random): SeededFault | undefined {
  const valued = [
    ...ground.resistors.map(({ id, ohms }) => ({ id, value: ohms, kind: "r" })),
    ...ground.capacitors.map(({ id, farads }) => ({ id, value: farads, kind: ground.polarised.has(id) ? "e" : "c" })),
  ];
  const pairs = valued.flatMap((a) =>
    valued
      .filter((b) => b.kind === a.kind && b.id > a.id && Math.max(a.value / b.value, b.value / a.value) > 1.25)
      .map((b) => [a.id, b.id]),
  );
  if (pairs.length === 0) return undefined;
  const [part, other] = random.pick(pairs);
  return part === undefined || other === undefined ? undefined : { kind: "exchanged", part, with: other };
}

/** One lead of a small part or a tube on another point than its own two. */
function move(ground: Ground, random: Random): SeededFault | undefined {
  const two = [...ground.resistors, ...ground.capacitors, ...ground.coils].flatMap(({ id, nodes }) => [
    { part: id, lead: "a", own: nodes },
    { part: id, lead: "b", own: nodes },
  ]);
  const tubes = ground.tubes.flatMap(({ id, nodes }) =>
    Object.keys(nodes).map((lead) => ({ part: id, lead, own: Object.values(nodes) as string[] })),
  );
  const { part, lead, own } = random.pick([...two, ...tubes]);
  const others = ground.points.filter((point) => !own.includes(point));
  return { kind: "moved-lead", part, lead, to: random.pick(others) };
}
