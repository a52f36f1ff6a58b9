import type { Element, Network, Pair } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { coldTransfer, ohmsOf, pointIndex, shareOf } from "./coldTransfer.ts";

const resistor = (id: string, nodes: Pair, ohms: number): Element => ({ kind: "resistor", id, nodes, ohms });

/** A bridge: a over b and c to the reference, 1 kohm between the arms; an island hangs on nothing. */
const arms = { ab: 1000, ac: 2000, b0: 3000, c0: 500, bc: 1000 };
const network: Network = {
  reference: "0",
  elements: [
    resistor("R1", ["a", "b"], arms.ab),
    resistor("R2", ["a", "c"], arms.ac),
    resistor("R3", ["b", "0"], arms.b0),
    resistor("R4", ["c", "0"], arms.c0),
    resistor("R5", ["b", "c"], arms.bc),
    { kind: "capacitor", id: "C1", nodes: ["a", "0"], farads: 1e-6 },
    { kind: "diode", id: "D1", nodes: ["island", "a"], saturationAmps: 1e-9, emission: 1.8, ohms: 0.05 },
  ],
};
const index = pointIndex(network);
const transfer = coldTransfer(network, index);
const ohms = (from: string, to = "0") => ohmsOf(network, index, transfer, from, to);

describe("ohms at rest", () => {
  it("of a bridge, by star and triangle", () => {
    // The triangle a-b-c as a star: each leg is the product of its two sides over their sum of 4 kohm.
    const sum = arms.ab + arms.ac + arms.bc;
    const [legA, legB, legC] = [(arms.ab * arms.ac) / sum, (arms.ab * arms.bc) / sum, (arms.ac * arms.bc) / sum];
    const [left, right] = [legB + arms.b0, legC + arms.c0];
    // Insulation of 1000 megohm lies beside it: some millionths.
    expect(ohms("a") / (legA + (left * right) / (left + right))).toBeCloseTo(1, 5);
    expect(ohms("a", "0")).toBe(ohms("0", "a"));
  });

  it("are nil from a point to itself, and open where nothing but insulation, a capacitor or a junction joins", () => {
    expect(ohms("b", "b")).toBe(0);
    expect(ohms("island")).toBe(Number.POSITIVE_INFINITY);
    expect(ohms("island", "a")).toBe(Number.POSITIVE_INFINITY);
    expect(ohms("nowhere")).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("shareOf", () => {
  it("is what one ampere through the meter drops across two points, either way round", () => {
    const across = (from: string, to: string, pair: readonly [string, string]) => shareOf(index, transfer, from, to, pair);
    expect(across("a", "0", ["a", "0"])).toBeCloseTo(ohms("a"), 6);
    // Along a path the drops add up, and what goes in comes out (Kirchhoff); insulation takes some millionths.
    expect(across("a", "0", ["a", "b"]) + across("a", "0", ["b", "0"])).toBeCloseTo(ohms("a"), 6);
    expect(across("a", "0", ["a", "b"]) / arms.ab + across("a", "0", ["a", "c"]) / arms.ac).toBeCloseTo(1, 5);
    // Reciprocity.
    expect(across("a", "0", ["b", "c"])).toBeCloseTo(across("b", "c", ["a", "0"]), 6);
    expect(across("a", "0", ["c", "b"])).toBeCloseTo(-across("a", "0", ["b", "c"]), 9);
  });
});

it("numbers every point but the reference, once", () => {
  expect([...index.keys()].sort()).toEqual(["a", "b", "c", "island"]);
  expect([...index.values()].sort()).toEqual([0, 1, 2, 3]);
});
