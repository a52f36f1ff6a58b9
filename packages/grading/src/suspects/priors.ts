import type { Element } from "@underchassis/calc";
import { faultWeights, type NotedPart } from "@underchassis/dataset";
import type { ChassisModel, Part } from "../model/index.ts";
import type { FaultKind } from "./fault.ts";

/** How likely each fault is before any reading, as relative odds. */
export interface Priors {
  of(kind: FaultKind, part: Part | undefined, element: Element): number;
  /** All solder bridges of a chassis with so many points together. */
  bridge(points: number): number;
}

type Odds = Readonly<Partial<Record<FaultKind, number>>>;

/**
 * Odds where no failure note speaks, by what the part is. from-memory: repairers' ranking (electrolytics and paper capacitors, tubes,
 * composition resistors first; wire and iron last). Crude levels are enough (de Kleer 1990).
 */
const DEFAULT_ODDS: Readonly<Record<string, Odds>> = {
  resistor: { open: 4, short: 0.3, "drift-high": 6, "drift-low": 2, "wrong-value": 3, exchanged: 2, "moved-lead": 1.5 },
  potentiometer: { open: 4, "drift-high": 4, "drift-low": 1, "moved-lead": 1 },
  capacitor: {
    open: 2,
    short: 4,
    leaky: 5,
    "lost-capacity": 5,
    "high-esr": 3,
    reversed: 2,
    "wrong-value": 1,
    exchanged: 1,
    "moved-lead": 1.5,
  },
  inductor: { open: 2, short: 1, "moved-lead": 1 },
  transformer: { open: 2, "shorted-turns": 2, "moved-lead": 1 },
  rectifier: { open: 3, short: 3, dead: 3, weak: 5, reversed: 2, "moved-lead": 1 },
  tube: { dead: 4, weak: 5, gassy: 2, "electrode-short": 2, "moved-lead": 1.5 },
  "regulator-tube": { open: 3, short: 0.5, reversed: 0.5, "moved-lead": 1 },
  zener: { open: 2, short: 3, reversed: 1, "moved-lead": 1 },
  contact: { open: 2, "drift-high": 2, "moved-lead": 0.5 },
  thermistor: { open: 1, short: 0.5, "moved-lead": 0.3 },
  lamp: { open: 2, short: 0.3, "moved-lead": 0.3 },
  line: { "line-voltage": 2 },
};

/** Parts that stand as contacts in the network. */
const CONTACTS: ReadonlySet<string> = new Set(["switch", "fuse", "breaker"]);

const WIRING: ReadonlySet<FaultKind> = new Set<FaultKind>(["moved-lead", "exchanged", "reversed", "wrong-value", "bridge"]);
/** Wiring errors against other faults in a set from a factory. from-memory. */
const FACTORY = 0.4;
/** Odds above are in tens of the failure notes' weights. */
const WEIGHT = 10;
/**
 * Odds are drawn together, since nobody has counted them: a fault that notes call a hundred times as common gets ten times the odds.
 */
const TEMPER = 0.5;

/** Solder and dirt between points belong to no part. */
const BRIDGE = "wire.bridge";

/** What odds can be given for: a kind of part and a kind of fault, as `capacitor.leaky`. */
export const ODDS_NAMES: readonly string[] = [
  ...Object.entries(DEFAULT_ODDS).flatMap(([part, odds]) => Object.keys(odds).map((kind) => `${part}.${kind}`)),
  BRIDGE,
];

/**
 * Priors of a chassis: odds of one's own where they are given, the failure notes of the dataset where they speak of such a part and
 * fault, else the odds above.
 *
 * @param own weights on the scale of the failure notes (1 rare, 100 the commonest), by a name of `ODDS_NAMES`
 */
export function priorsOf(model: ChassisModel, own: ReadonlyMap<string, number> = new Map()): Priors {
  const notes = [...model.dataset.failureNotes.values()];
  const kitBuilt = model.assembly === "kit" || model.assembly === "home";
  const weigh = (kind: FaultKind, weight: number) =>
    weight <= 0 ? 0 : weight ** TEMPER * (WIRING.has(kind) && model.assembly === "factory" ? FACTORY : 1);
  const known = new Map<Part, ReturnType<typeof faultWeights>>();
  const notedOf = (part: Part) => {
    const noted = known.get(part) ?? faultWeights(notes, notedPart(part, model.era, kitBuilt));
    known.set(part, noted);
    return noted;
  };
  return {
    of(kind, part, element) {
      const what = part === undefined ? "line" : CONTACTS.has(part.kind) ? "contact" : part.kind;
      const odds = DEFAULT_ODDS[what]?.[kind] ?? (element.kind === "voltage-source" && kind === "line-voltage" ? 2 : 0);
      const given = own.get(`${what}.${kind}`);
      if (given !== undefined) return weigh(kind, given);
      if (odds === 0) return 0;
      return weigh(kind, (part === undefined ? undefined : notedOf(part).get(kind)?.weight) ?? odds * WEIGHT);
    },
    // A bridge belongs to no part, so that it is as likely as all the leads of a few parts.
    bridge: () =>
      weigh("bridge", own.get(BRIDGE) ?? Math.max(WEIGHT, faultWeights(notes, { kind: "wire", kitBuilt }).get("bridge")?.weight ?? 0)),
  };
}

function notedPart(part: Part, era: number | undefined, kitBuilt: boolean): NotedPart {
  const { dielectric } = part.lives.found.marking ?? {};
  const { kind, role, duty } = part;
  return { kind, role, duty, era, kitBuilt, ...(dielectric === undefined ? {} : { families: [dielectric] }) };
}
