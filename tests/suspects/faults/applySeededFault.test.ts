import type { Element, Network } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { applySeededFault } from "./applySeededFault.ts";
import type { SeededFault } from "./seededFault.ts";

const triode = { mu: 100, ex: 1.4, kg1: 1060, kp: 600, kvb: 300 };
const network: Network = {
  reference: "chassis",
  elements: [
    { kind: "resistor", id: "R1", nodes: ["B+", "plate"], ohms: 100e3 },
    { kind: "resistor", id: "R2", nodes: ["cathode", "chassis"], ohms: 1500 },
    { kind: "capacitor", id: "C1", nodes: ["B+", "chassis"], farads: 20e-6 },
    { kind: "triode", id: "V1", nodes: { plate: "plate", grid: "grid", cathode: "cathode" }, parameters: triode },
    { kind: "resistor", id: "V1/heater", nodes: ["chassis", "heater 2"], ohms: 21 },
    { kind: "vacuum-diode", id: "V2/plate-1", nodes: ["hv 1", "B+"], perveance: 4e-4 },
    { kind: "vacuum-diode", id: "V2/plate-2", nodes: ["hv 2", "B+"], perveance: 4e-4 },
    {
      kind: "transformer",
      id: "T1",
      windings: [
        { id: "primary", nodes: ["line", "neutral"], turns: 117, ohms: 4 },
        { id: "hv-1", nodes: ["hv 1", "chassis"], turns: 300, ohms: 120 },
        { id: "hv-2", nodes: ["chassis", "hv 2"], turns: 300, ohms: 120 },
      ],
    },
  ],
};
const faulted = (fault: SeededFault): Map<string, Element> =>
  new Map(applySeededFault(network, fault).elements.map((element) => [element.id, element]));

describe("a seeded fault", () => {
  it("leaves the network that it is applied to as it was", () => {
    const before = JSON.stringify(network);
    applySeededFault(network, { kind: "exchanged", part: "R1", with: "R2" });
    expect(JSON.stringify(network)).toBe(before);
  });

  it("opens a part, or one section of a rectifier, or half a winding", () => {
    expect([...faulted({ kind: "open", part: "R1" }).keys()]).not.toContain("R1");
    const half = faulted({ kind: "open", part: "V2", lead: "plate-2" });
    expect([half.has("V2/plate-1"), half.has("V2/plate-2")]).toEqual([true, false]);
    expect(faulted({ kind: "open", part: "T1", lead: "hv-1" }).get("T1")).toMatchObject({ windings: [{ id: "primary" }, { id: "hv-2" }] });
  });

  it("exchanges two values and leaves the leads", () => {
    const swapped = faulted({ kind: "exchanged", part: "R1", with: "R2" });
    expect(swapped.get("R1")).toMatchObject({ nodes: ["B+", "plate"], ohms: 1500 });
    expect(swapped.get("R2")).toMatchObject({ nodes: ["cathode", "chassis"], ohms: 100e3 });
  });

  it("moves one lead of a part or a tube", () => {
    expect(faulted({ kind: "moved-lead", part: "R1", lead: "b", to: "grid" }).get("R1")).toMatchObject({ nodes: ["B+", "grid"] });
    expect(faulted({ kind: "moved-lead", part: "V1", lead: "grid", to: "B+" }).get("V1")).toMatchObject({
      nodes: { plate: "plate", grid: "B+", cathode: "cathode" },
    });
  });

  it("drops a part whose two leads come to lie on one point", () => {
    expect(faulted({ kind: "moved-lead", part: "R1", lead: "b", to: "B+" }).has("R1")).toBe(false);
  });

  it("leaves the heater of a dead tube a load", () => {
    const dead = faulted({ kind: "dead", part: "V1" });
    expect([dead.has("V1"), dead.has("V1/heater")]).toEqual([false, true]);
  });

  it("shorts grid and cathode, or heater and cathode, of a tube", () => {
    const grid = faulted({ kind: "electrode-short", part: "V1", lead: "grid-cathode", ohms: 0.5 });
    expect(grid.get("V1 short")).toMatchObject({ nodes: ["grid", "cathode"], ohms: 0.5 });
    const heater = faulted({ kind: "electrode-short", part: "V1", lead: "heater-cathode", ohms: 100 });
    expect(heater.get("V1 short")).toMatchObject({ nodes: ["heater 2", "cathode"], ohms: 100 });
  });

  it("splits a winding with shorted turns into the rest and a closed loop", () => {
    const { windings } = faulted({ kind: "shorted-turns", part: "T1", lead: "hv-1", factor: 0.1 }).get("T1") as Extract<
      Element,
      { kind: "transformer" }
    >;
    expect(windings.map(({ turns, ohms }) => [turns, ohms])).toEqual([
      [117, 4],
      [270, 108],
      [300, 120],
      [30, 12],
    ]);
    const loop = windings.at(-1)?.nodes;
    expect(loop?.[0]).toBe(loop?.[1]);
  });

  it("refuses a winding that is not there, and a bridge with one point", () => {
    expect(() => faulted({ kind: "open", part: "T1", lead: "hv-9" })).toThrow("cannot lose hv-9");
    expect(() => faulted({ kind: "bridge", part: "B+" })).toThrow("two points");
  });
});
