import type { Element } from "@underchassis/calc";
import type { Dataset, FailureNote } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { smallDataset } from "../testing/smallDataset.ts";
import { halfWaveParts } from "../testing/suspectChassis.ts";
import { FAULT_KINDS, type FaultKind } from "./fault.ts";
import { ODDS_NAMES, priorsOf } from "./priors.ts";

const note = (id: string, more: Partial<FailureNote>): FailureNote => ({
  schemaVersion: 1,
  id,
  title: id,
  partKind: "capacitor",
  mechanism: "",
  symptom: { text: "" },
  measurement: { text: "" },
  cure: "",
  sources: ["common-practice"],
  ...more,
});
const withNotes = (...notes: FailureNote[]): Dataset => ({
  ...smallDataset(),
  failureNotes: new Map(notes.map((each) => [each.id, each])),
});

type Assembly = "factory" | "kit" | "home" | "unknown";
interface Case {
  assembly?: Assembly;
  notes?: FailureNote[];
  own?: ReadonlyMap<string, number>;
}

function priorsWith({ assembly = "unknown", notes = [], own = new Map() }: Case) {
  const model = modelOf({ chassis: assembly === "unknown" ? {} : { assembly }, parts: [...halfWaveParts] }, withNotes(...notes));
  const elements = new Map(
    model.compile({ life: "found", condition: "operating", line: "actual" }).network.elements.map((each) => [each.id, each]),
  );
  const priors = priorsOf(model, own);
  const of = (kind: FaultKind, part: string) => priors.of(kind, model.parts.get(part), elements.get(part) as Element);
  return { of, bridge: () => priors.bridge(10) };
}

describe("priorsOf", () => {
  it("a note's weight wins over the default, tempered: four times the weight is twice the odds", () => {
    const weigh = (weight: number) => priorsWith({ notes: [note("n", { fault: { kind: "leaky", weight } })] }).of("leaky", "C1");
    expect(weigh(80) / weigh(20)).toBeCloseTo(2, 12);
    expect(weigh(1)).toBeLessThan(priorsWith({}).of("leaky", "C1"));
    expect(weigh(100)).toBeGreaterThan(priorsWith({}).of("leaky", "C1"));
  });

  it("a note about another part, or another fault, changes nothing", () => {
    const { of } = priorsWith({ notes: [note("n", { fault: { kind: "leaky", weight: 100 } })] });
    expect(of("short", "C1")).toBe(priorsWith({}).of("short", "C1"));
    expect(of("open", "R1")).toBe(priorsWith({}).of("open", "R1"));
  });

  it("a kit raises wiring by its note's factor, a factory lowers it, and neither touches ageing", () => {
    const notes = [note("w", { partKind: "wiring", fault: { kind: "moved-lead", weight: 9, kitBuilt: 4 } })];
    const [kit, home, unknown, factory] = (["kit", "home", "unknown", "factory"] as const).map((assembly) =>
      priorsWith({ assembly, notes }),
    );
    expect(kit!.of("moved-lead", "R1") / unknown!.of("moved-lead", "R1")).toBeCloseTo(2, 12);
    expect(home!.of("moved-lead", "R1")).toBe(kit!.of("moved-lead", "R1"));
    for (const kind of ["moved-lead", "wrong-value", "exchanged"] as const)
      expect(factory!.of(kind, "R1") / unknown!.of(kind, "R1"), kind).toBeCloseTo(0.4, 12);
    for (const kind of ["open", "drift-high"] as const) expect(factory!.of(kind, "R1"), kind).toBe(kit!.of(kind, "R1"));
  });

  it("bridges: at least the default, raised by a kit's note", () => {
    const bridge = (kitBuilt: number) => [note("b", { partKind: "wiring", fault: { kind: "bridge", weight: 1, kitBuilt } })];
    expect(priorsWith({ notes: bridge(1) }).bridge()).toBe(priorsWith({}).bridge());
    expect(priorsWith({ notes: bridge(1000), assembly: "kit" }).bridge()).toBeGreaterThan(priorsWith({ assembly: "kit" }).bridge());
    expect(priorsWith({ assembly: "factory" }).bridge()).toBeLessThan(priorsWith({}).bridge());
  });

  it("odds of one's own win over notes and defaults; nil forbids a fault", () => {
    const notes = [note("n", { fault: { kind: "leaky", weight: 50 } })];
    const own = new Map([
      ["capacitor.leaky", 4],
      ["resistor.open", 0],
      ["wire.bridge", 9],
    ]);
    const given = priorsWith({ notes, own });
    expect(given.of("leaky", "C1")).toBeCloseTo(2, 12);
    expect(given.of("open", "R1")).toBe(0);
    expect(given.bridge()).toBeCloseTo(3, 12);
    expect(given.of("short", "C1")).toBe(priorsWith({ notes }).of("short", "C1"));
  });

  it("is nil for what a part cannot have", () => {
    const { of } = priorsWith({});
    for (const kind of ["gassy", "lost-capacity", "shorted-turns", "line-voltage"] as const) expect(of(kind, "R1"), kind).toBe(0);
  });
});

it("every name that odds can be given for is a part and a kind of fault, once", () => {
  const kinds: ReadonlySet<string> = new Set(FAULT_KINDS);
  for (const name of ODDS_NAMES) expect(kinds.has(name.slice(name.indexOf(".") + 1)), name).toBe(true);
  expect(new Set(ODDS_NAMES).size).toBe(ODDS_NAMES.length);
  // Every kind can be given odds for some part.
  expect(new Set(ODDS_NAMES.map((name) => name.slice(name.indexOf(".") + 1)))).toEqual(kinds);
});
