import { elementPoints } from "@underchassis/calc";
import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { halfWaveParts, outputStageParts } from "../testing/suspectChassis.ts";
import { enumerateFaults } from "./enumerate.ts";
import { priorsOf } from "./priors.ts";

type Chassis = Parameters<typeof modelOf>[0]["chassis"];

function all(parts: readonly JobPart[], chassis: Chassis = {}) {
  const model = modelOf({ chassis, parts: [...parts] });
  const compiled = model.compile({ life: "found", condition: "operating", line: "actual" });
  const priors = priorsOf(model);
  const { singles, families } = enumerateFaults(model, "found", [compiled], priors);
  const points = [...new Set(compiled.network.elements.flatMap(elementPoints))];
  const members = families.flatMap(({ base, members }) => members.map((member) => ({ ...member, base })));
  /** Kinds of fault of an element, each as often as it is there; leads and bridges apart. */
  const kindsOf = (element: string) =>
    [
      ...singles.filter(({ fault }) => fault.element === element && fault.kind !== "moved-lead").map(({ fault }) => fault.kind),
      ...members.filter(({ base, kind }) => base.element === element && kind !== "bridge").map(({ kind }) => kind),
    ].sort();
  return { singles, families, members, points, kindsOf, priors };
}
const changed = (parts: readonly JobPart[], name: string, more: Partial<JobPart>) =>
  parts.map((part) => (part.name === name ? { ...part, ...more } : part));
const twentyOne = Array.from({ length: 21 }, () => "wrong-value");

describe("enumerateFaults on a half-wave supply", () => {
  const { singles, families, members, points, kindsOf, priors } = all(halfWaveParts);

  it("gives every part each of its kinds once, a resistor every misread value", () => {
    const electrolytic = ["high-esr", "leaky", "lost-capacity", "open", "reversed", "short", "wrong-value", "wrong-value"];
    expect(kindsOf("C1")).toEqual(electrolytic);
    expect(kindsOf("C2")).toEqual(electrolytic);
    // R1 and R2 in each other's place is one fault, and the first's; C1 and C2 are alike.
    expect(kindsOf("R1")).toEqual(["drift-high", "drift-low", "exchanged", "open", "short", ...twentyOne]);
    expect(kindsOf("R2")).toEqual(["drift-high", "drift-low", "open", "short", ...twentyOne]);
    expect(kindsOf("D1")).toEqual(["open", "reversed", "short"]);
    for (const winding of ["T1.primary", "T1.hv"]) expect(kindsOf(winding)).toEqual(["open", "shorted-turns"]);
  });

  it("gives the line too low and too high a voltage", () => {
    const line = members.filter(({ kind }) => kind === "line-voltage");
    expect(line.map(({ at }) => at)).toEqual([
      [60, 0.93 * 120],
      [1.07 * 120, 1.3 * 120],
    ]);
  });

  it("lands every lead on every other point, and never on the part's own other end", () => {
    const moves = (element: string, lead: string) =>
      singles
        .flatMap(({ fault }) => (fault.kind === "moved-lead" && fault.element === element && fault.lead === lead ? [fault.to] : []))
        .sort();
    const but = (...own: string[]) => points.filter((point) => !own.includes(point)).sort();
    expect(points.length).toBeGreaterThan(4);
    for (const lead of ["0", "1"]) {
      expect(moves("R1", lead)).toEqual(but("raw", "B+"));
      expect(moves("T1.hv", lead)).toEqual(but("hv", "chassis"));
    }
    const from = singles.find(({ fault }) => fault.kind === "moved-lead" && fault.element === "R1" && fault.lead === "1")?.fault.from;
    expect(from).toBe("B+");
  });

  it("bridges every pair of points once, all together with the prior of bridges", () => {
    const bridges = families.filter(({ by }) => by === "bridge");
    expect(bridges).toHaveLength((points.length * (points.length - 1)) / 2);
    expect(new Set(bridges.map(({ base }) => [base.part, base.to].sort().join("|"))).size).toBe(bridges.length);
    const sum = bridges.flatMap((bridge) => bridge.members).reduce((total, { prior }) => total + prior, 0);
    expect(sum).toBeCloseTo(priors.bridge(points.length), 9);
  });

  it("has positive priors, rising nodes, and ranges that the nodes span", () => {
    for (const { prior } of [...singles, ...members]) expect(prior).toBeGreaterThan(0);
    for (const { nodes, members: own, base } of families) {
      expect(
        nodes.every((node, k) => k === 0 || node > nodes[k - 1]!),
        base.element,
      ).toBe(true);
      for (const { at } of own) for (const value of typeof at === "number" ? [] : at) expect(value).toBeGreaterThanOrEqual(nodes[0]! * 0.9);
    }
  });

  it("spreads a lead's prior over where it may lie: two leads, each as likely as the kind", () => {
    const sum = singles
      .filter(({ fault }) => fault.kind === "moved-lead" && fault.element === "R1")
      .reduce((total, { prior }) => total + prior, 0);
    const other = singles
      .filter(({ fault }) => fault.kind === "moved-lead" && fault.element === "R2")
      .reduce((total, { prior }) => total + prior, 0);
    expect(sum).toBeCloseTo(other, 9);
  });
});

describe("enumerateFaults", () => {
  it("leaves out what a measurement has cleared, but not where the leads go", () => {
    const cleared = all(changed(halfWaveParts, "R1", { measured: { value: "2.21 kohm", circuit: "out" } }));
    expect(cleared.kindsOf("R1")).toEqual([]);
    expect(cleared.singles.some(({ fault }) => fault.kind === "moved-lead" && fault.element === "R1")).toBe(true);
    expect(cleared.kindsOf("R2")).toContain("drift-high");
  });

  it("makes wiring likelier in a kit than in a set from a factory, ageing alike", () => {
    const [kit, factory] = (["kit", "factory"] as const).map((assembly) => all(halfWaveParts, { assembly }));
    const sumOf = ({ singles }: ReturnType<typeof all>, kind: string) =>
      singles.reduce((sum, { fault, prior }) => sum + (fault.kind === kind ? prior : 0), 0);
    expect(sumOf(kit!, "moved-lead")).toBeGreaterThan(2 * sumOf(factory!, "moved-lead"));
    expect(sumOf(kit!, "open")).toBeCloseTo(sumOf(factory!, "open"), 9);
  });

  it("knows a rectifier tube's two sections together, and an amplifier tube's electrodes", () => {
    const { singles, families, kindsOf } = all(outputStageParts);
    const both = ["V1/plate-1", "V1/plate-2"];
    const dead = singles.filter(({ fault }) => fault.kind === "dead" && fault.part === "V1");
    expect(dead.map(({ fault }) => [fault.element, ...(fault.also ?? [])])).toEqual([both]);
    expect(families.filter(({ base }) => base.also !== undefined).map(({ base }) => base.parameter)).toEqual(["emission"]);
    const cathode = singles.filter(({ fault }) => fault.kind === "moved-lead" && fault.also !== undefined);
    expect(new Set(cathode.map(({ fault }) => `${fault.lead} ${fault.from}`))).toEqual(new Set(["1 raw"]));
    expect(kindsOf("V2")).toEqual(["dead", "electrode-short", "electrode-short", "electrode-short", "electrode-short", "gassy", "weak"]);
    const shorts = singles.filter(({ fault }) => fault.kind === "electrode-short").map(({ fault }) => fault.lead);
    expect(shorts).toEqual(["grid-cathode", "screen-grid", "plate-screen"]);
    // The heater's live end.
    expect(families.find(({ by }) => by === "electrode-short")?.base).toMatchObject({ lead: "cathode-heater", to: "heater 2" });
  });
});
