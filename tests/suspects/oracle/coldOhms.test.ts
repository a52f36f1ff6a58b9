import type { Network } from "@underchassis/calc";
import { expect, it } from "vitest";
import { coldOhms } from "./coldOhms.ts";

const network: Network = {
  reference: "chassis",
  elements: [
    { kind: "resistor", id: "R1", nodes: ["B+", "tap"], ohms: 22e3 },
    { kind: "resistor", id: "R2", nodes: ["tap", "chassis"], ohms: 47e3 },
    { kind: "resistor", id: "R3", nodes: ["B+", "chassis"], ohms: 100e3 },
    { kind: "capacitor", id: "C1", nodes: ["tap", "grid"], farads: 1e-8 },
    { kind: "capacitor", id: "C2", nodes: ["B+", "chassis"], farads: 1e-5, leakOhms: 50e3 },
    { kind: "transformer", id: "T1", windings: [{ id: "primary", nodes: ["line", "neutral"], turns: 117, ohms: 3 }] },
    { kind: "vacuum-diode", id: "V1", nodes: ["hv", "B+"], perveance: 1e-3 },
  ],
};

// Resistors in series and parallel, by hand: 100k and 50k make 33333; tap to chassis is 47k beside 22k + 33333.
it("sees every parallel path, leaks too, and nothing through a capacitor, a cold tube or between windings", async () => {
  const [bPlus, tap, grid, primary, across, hv] = await coldOhms(network, [
    ["B+", "chassis"],
    ["tap", "chassis"],
    ["grid", "chassis"],
    ["line", "neutral"],
    ["line", "chassis"],
    ["hv", "chassis"],
  ]);
  const parallel = (a: number, b: number): number => (a * b) / (a + b);
  expect(bPlus).toBeCloseTo(parallel(parallel(100e3, 50e3), 69e3), 1);
  expect(tap).toBeCloseTo(parallel(47e3, 22e3 + parallel(100e3, 50e3)), 1);
  expect([grid, across, hv]).toEqual([null, null, null]);
  expect(primary).toBeCloseTo(3, 6);
});
