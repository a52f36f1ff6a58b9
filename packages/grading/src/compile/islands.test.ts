import type { Element } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { floatingWindings, stackedCapacitors } from "./islands.ts";

const line: Element = { kind: "voltage-source", id: "line", nodes: ["hot", "neutral"], rmsVolts: 120, hertz: 60 };
const resistor = (id: string, a: string, b: string): Element => ({ kind: "resistor", id, nodes: [a, b], ohms: 1000 });
const capacitor = (id: string, a: string, b: string, leakOhms?: number): Element => ({
  kind: "capacitor",
  id,
  nodes: [a, b],
  farads: 1e-6,
  ...(leakOhms === undefined ? {} : { leakOhms }),
});
const transformer = (...pairs: [string, string][]): Element => ({
  kind: "transformer",
  id: "T1",
  windings: pairs.map((nodes, index) => ({ id: `w${index}`, nodes, turns: 100, ohms: 1 })),
});

describe("points to tie to the reference", () => {
  it("are one for each island that only a core couples", () => {
    const ties = floatingWindings(
      [line, transformer(["hot", "neutral"], ["a", "chassis"], ["h1", "h2"]), resistor("R", "a", "chassis")],
      "chassis",
    );
    expect(ties).toHaveLength(2);
    expect(ties.some((point) => ["hot", "neutral"].includes(point))).toBe(true);
    expect(ties.some((point) => ["h1", "h2"].includes(point))).toBe(true);
  });

  it("are none where a resistor, a leaky capacitor or a tube already holds the winding", () => {
    const held: Element[][] = [
      [resistor("R", "h2", "chassis")],
      [capacitor("C", "h2", "chassis", 1e6)],
      [{ kind: "vacuum-diode", id: "V", nodes: ["h1", "chassis"], perveance: 1e-3 }],
      [{ kind: "switch", id: "S", nodes: ["h1", "chassis"], closed: true, contactOhms: 0.01 }],
    ];
    for (const parts of held) {
      const ties = floatingWindings([transformer(["hot", "chassis"], ["h1", "h2"]), resistor("RL", "hot", "chassis"), ...parts], "chassis");
      expect(ties, parts[0]!.id).toEqual([]);
    }
  });

  it("count neither a sound capacitor nor an open switch nor a current source as a path", () => {
    const loose: Element[] = [
      capacitor("C", "h2", "chassis"),
      { kind: "switch", id: "S", nodes: ["h1", "chassis"], closed: false },
      { kind: "current-source", id: "I", nodes: ["h1", "chassis"], amps: 1e-3 },
    ];
    expect(floatingWindings([transformer(["hot", "chassis"], ["h1", "h2"]), ...loose], "chassis")).toHaveLength(1);
  });

  it("are none for a floating point that no transformer reaches: that is a wiring error, for the solver to name", () => {
    expect(
      floatingWindings([line, resistor("R1", "hot", "neutral"), resistor("R2", "neutral", "chassis"), resistor("R3", "x", "y")], "chassis"),
    ).toEqual([]);
  });
});

describe("capacitors in a stack", () => {
  it("are those whose common point nothing but leakage holds", () => {
    const source: Element = { kind: "voltage-source", id: "B", nodes: ["B+", "chassis"], dcVolts: 600 };
    const stack = [source, capacitor("C1", "B+", "mid"), capacitor("C2", "mid", "chassis")];
    expect(stackedCapacitors(stack, "chassis")).toEqual(["C1", "C2"]);
    expect(stackedCapacitors([...stack, resistor("R", "mid", "chassis")], "chassis")).toEqual([]);
  });

  it("are not a lone capacitor to a point that something else leaves open", () => {
    const source: Element = { kind: "voltage-source", id: "B", nodes: ["B+", "chassis"], dcVolts: 600 };
    expect(stackedCapacitors([source, capacitor("C1", "B+", "loose")], "chassis")).toEqual([]);
  });
});
