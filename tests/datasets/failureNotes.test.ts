/** The failure notes as a whole: how many, of what, and whether every fault of every part that a chassis can have is spoken of. */
import { faultWeights, noteSpeaksOf, PART_FAULTS } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { describe, expect, it } from "vitest";

const dataset = loadDataset();
const notes = [...dataset.failureNotes.values()];

describe("failure notes", () => {
  it("are at least 190, 25 of them errors of builders and repairers", () => {
    expect(notes.length).toBeGreaterThanOrEqual(190);
    expect(notes.filter(({ partKind }) => partKind === "wiring").length).toBeGreaterThanOrEqual(25);
  });

  it.each(Object.entries(PART_FAULTS))("speak of every fault that a %s can have", (kind, faults) => {
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
