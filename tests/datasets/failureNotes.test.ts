/** The failure notes as a whole: how many, of what, and whether every fault of every part that a chassis can have is spoken of. */
import { faultWeights, type NotedFault, noteSpeaksOf } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { describe, expect, it } from "vitest";

const dataset = loadDataset();
const notes = [...dataset.failureNotes.values()];

/** Faults that each kind of part can have in a network. */
const FAULTS: Readonly<Record<string, readonly NotedFault[]>> = {
  resistor: ["open", "short", "leaky", "drift-high", "drift-low", "wrong-value", "exchanged", "moved-lead"],
  potentiometer: ["open", "short", "leaky", "drift-high", "drift-low", "wrong-value", "exchanged", "moved-lead"],
  capacitor: ["open", "short", "leaky", "drift-low", "lost-capacity", "high-esr", "reversed", "wrong-value", "exchanged", "moved-lead"],
  inductor: ["open", "short", "leaky", "drift-high", "drift-low", "shorted-turns", "exchanged", "moved-lead"],
  transformer: ["open", "short", "leaky", "shorted-turns", "exchanged", "moved-lead", "line-voltage"],
  rectifier: ["open", "short", "leaky", "dead", "weak", "gassy", "reversed", "exchanged", "moved-lead", "wrong-value"],
  zener: ["open", "short", "reversed", "moved-lead"],
  tube: ["dead", "weak", "gassy", "electrode-short", "exchanged", "moved-lead"],
  "regulator-tube": ["open", "short", "dead", "drift-high", "reversed", "exchanged", "moved-lead"],
  fuse: ["open", "drift-high", "wrong-value", "moved-lead"],
  breaker: ["open", "short", "drift-high", "moved-lead"],
  switch: ["open", "short", "leaky", "drift-high", "moved-lead"],
  thermistor: ["open", "short", "drift-high", "moved-lead"],
  lamp: ["open", "short", "wrong-value", "moved-lead"],
  cord: ["open", "short", "leaky", "exchanged", "moved-lead"],
  wire: ["open", "short", "leaky", "bridge", "moved-lead"],
  load: ["open", "short", "drift-high", "drift-low", "moved-lead"],
  battery: ["dead", "weak", "drift-high", "reversed", "moved-lead"],
};

describe("failure notes", () => {
  it("are at least 190, 25 of them errors of builders and repairers", () => {
    expect(notes.length).toBeGreaterThanOrEqual(190);
    expect(notes.filter(({ partKind }) => partKind === "wiring").length).toBeGreaterThanOrEqual(25);
  });

  it.each(Object.entries(FAULTS))("speak of every fault that a %s can have", (kind, faults) => {
    const known = faultWeights(notes, { kind, kitBuilt: false });
    expect(faults.filter((fault) => !known.has(fault))).toEqual([]);
    expect(known.has("bridge")).toBe(true);
  });

  const parts = [...dataset.stages.values()].flatMap((template) =>
    template.parts.map((part) => ({ where: `${template.id} ${part.role}`, kind: part.kind, role: part.role, duty: part.duty })),
  );

  it("speak of every part of every template, with more than wiring errors", () => {
    const silent = parts.filter((part) => {
      const told = notes.filter((note) => noteSpeaksOf(note, { ...part, kitBuilt: false }));
      return !told.some(({ partKind }) => partKind === part.kind);
    });
    expect(silent.map(({ where }) => where)).toEqual([]);
  });

  it("name roles that some template has", () => {
    const roles = new Set(parts.map(({ role }) => role));
    const strays = notes.flatMap(({ id, roles: named }) =>
      (named ?? []).filter((role) => !roles.has(role)).map((role) => `${id}: ${role}`),
    );
    expect(strays).toEqual([]);
  });

  it("give each school a source of its own saying, and two schools at least where there are any", () => {
    const lonely = notes.filter(({ schools }) => schools !== undefined && schools.length < 2);
    expect(lonely.map(({ id }) => id)).toEqual([]);
    expect(notes.filter(({ schools }) => schools !== undefined).length).toBeGreaterThan(15);
  });

  it("know sources and cautions that exist", () => {
    const strays = notes.flatMap(({ id, sources, schools, cautions }) => [
      ...[...sources, ...(schools ?? []).map(({ source }) => source)]
        .filter((source) => !dataset.sources.has(source))
        .map((source) => `${id}: ${source}`),
      ...(cautions ?? []).filter((caution) => !dataset.cautions.has(caution)).map((caution) => `${id}: ${caution}`),
    ]);
    expect(strays).toEqual([]);
  });

  it("make wiring errors likelier in a kit-built chassis, and age no less likely", () => {
    const [kit, factory] = [true, false].map((kitBuilt) => faultWeights(notes, { kind: "resistor", duty: "plate-load", kitBuilt }));
    expect(kit!.get("moved-lead")!.weight).toBeGreaterThan(3 * factory!.get("moved-lead")!.weight);
    expect(kit!.get("drift-high")!.weight).toBe(factory!.get("drift-high")!.weight);
    expect(factory!.get("drift-high")!.weight).toBeGreaterThan(factory!.get("moved-lead")!.weight);
  });
});
