import { describe, expect, it } from "vitest";
import { faultWeights } from "./faultWeights.ts";
import type { FailureNote } from "./generated/index.ts";

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
const weightOf = (
  notes: FailureNote[],
  part: Partial<Parameters<typeof faultWeights>[1]>,
  kind: Parameters<ReturnType<typeof faultWeights>["get"]>[0],
) => faultWeights(notes, { kind: "capacitor", kitBuilt: false, ...part }).get(kind)?.weight;

describe("odds of a fault", () => {
  it("are those of the heaviest note, not the sum", () => {
    const notes = [note("a", { fault: { kind: "leaky", weight: 30 } }), note("b", { fault: { kind: "leaky", weight: 50 } })];
    expect(weightOf(notes, {}, "leaky")).toBe(50);
    expect(
      faultWeights(notes, { kind: "capacitor", kitBuilt: false })
        .get("leaky")
        ?.notes.map(({ id }) => id),
    ).toEqual(["b", "a"]);
  });

  it("follow the notes about the part's place before those about its kind", () => {
    const notes = [
      note("general", { fault: { kind: "leaky", weight: 50 } }),
      note("by role", { roles: ["couplingCapacitor"], fault: { kind: "leaky", weight: 7 } }),
      note("by duty", { duties: ["bias"], fault: { kind: "leaky", weight: 9 } }),
    ];
    expect(weightOf(notes, { role: "couplingCapacitor" }, "leaky")).toBe(7);
    expect(weightOf(notes, { role: "filterCapacitor", duty: "bias" }, "leaky")).toBe(9);
    expect(weightOf(notes, { role: "toneCapacitor", duty: "bypass" }, "leaky")).toBe(50);
  });

  it("leave out notes about another kind, make or era, and count what is not known", () => {
    const notes = [note("a", { families: ["paper"], era: { to: 1960 }, fault: { kind: "leaky", weight: 40 } })];
    expect(weightOf(notes, {}, "leaky")).toBe(40);
    expect(weightOf(notes, { families: ["paper"], era: 1950 }, "leaky")).toBe(40);
    expect(weightOf(notes, { families: ["film"] }, "leaky")).toBeUndefined();
    expect(weightOf(notes, { era: 1970 }, "leaky")).toBeUndefined();
    expect(weightOf(notes, { kind: "resistor" }, "leaky")).toBeUndefined();
  });

  it("grow in a kit-built chassis by the note's factor", () => {
    const notes = [note("a", { partKind: "wiring", fault: { kind: "moved-lead", weight: 10, kitBuilt: 8 } })];
    expect(weightOf(notes, {}, "moved-lead")).toBe(10);
    expect(weightOf(notes, { kitBuilt: true }, "moved-lead")).toBe(80);
  });

  it("of wiring go to every kind, or to those that the note names", () => {
    const any = note("any", { partKind: "wiring", fault: { kind: "bridge", weight: 3 } });
    const some = note("some", { partKind: "wiring", fault: { kind: "reversed", weight: 3, partKinds: ["rectifier"] } });
    expect(weightOf([any, some], { kind: "resistor" }, "bridge")).toBe(3);
    expect(weightOf([any, some], { kind: "resistor" }, "reversed")).toBeUndefined();
    expect(weightOf([any, some], { kind: "rectifier" }, "reversed")).toBe(3);
  });

  it("leave out notes that name no fault", () => {
    expect([...faultWeights([note("a", {})], { kind: "capacitor", kitBuilt: false }).keys()]).toEqual([]);
  });
});
