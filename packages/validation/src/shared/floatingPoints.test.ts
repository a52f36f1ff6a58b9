import type { Element } from "@underchassis/calc";
import { expect, it } from "vitest";
import { floatingPoints } from "./floatingPoints.ts";

const floating = (...elements: Element[]) => [...floatingPoints({ elements, reference: "0" })].sort();
const resistor = (a: string, b: string): Element => ({ kind: "resistor", id: `r ${a} ${b}`, nodes: [a, b], ohms: 1e3 });
const capacitor = (a: string, b: string): Element => ({ kind: "capacitor", id: `c ${a} ${b}`, nodes: [a, b], farads: 1e-6, leakOhms: 1e9 });
const triode: Element = {
  kind: "triode",
  id: "v1",
  nodes: { plate: "plate", grid: "grid", cathode: "cathode" },
  parameters: { mu: 100, ex: 1.4, kg1: 1060, kp: 600, kvb: 300 },
};

it("finds a grid that only a coupling capacitor holds", () => {
  const stage = [triode, resistor("plate", "0"), resistor("cathode", "0"), capacitor("in", "grid")];
  expect(floating(...stage)).toEqual(["grid"]);
  expect(floating(...stage, resistor("grid", "0"))).toEqual([]);
});

it("lets a tuned circuit float that minds nothing", () => {
  const coil: Element = { kind: "inductor", id: "l", nodes: ["top", "bottom"], henries: 1e-4 };
  expect(floating(coil, capacitor("top", "0"), capacitor("bottom", "0"))).toEqual([]);
  expect(floating(coil, capacitor("top", "0"), capacitor("bottom", "0"), resistor("top", "bottom"))).toEqual(["bottom", "top"]);
});

it("takes a winding and a source as something to stand on", () => {
  const source: Element = { kind: "voltage-source", id: "s", nodes: ["a", "b"], dcVolts: 1 };
  expect(floating(source, resistor("a", "c"))).toEqual([]);
});
