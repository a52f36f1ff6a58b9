import { expect, it } from "vitest";
import type { Element, Network } from "./network.ts";
import { solveSteady } from "./steady.ts";

/** A tube rectifier into a filter that nothing discharges but a very slow leak. */
const unloaded = (rmsVolts: number): Network => ({
  reference: "0",
  elements: [
    { kind: "voltage-source", id: "ac", nodes: ["a", "0"], rmsVolts, hertz: 60 },
    { kind: "resistor", id: "Rw", nodes: ["a", "p"], ohms: 100 },
    { kind: "vacuum-diode", id: "V1", nodes: ["p", "k"], perveance: 3.5e-4 },
    { kind: "capacitor", id: "C1", nodes: ["k", "0"], farads: 40e-6 },
    { kind: "inductor", id: "L1", nodes: ["k", "b"], henries: 8, dcrOhms: 200 },
    { kind: "capacitor", id: "C2", nodes: ["b", "0"], farads: 40e-6, leakOhms: 50e6 },
  ] satisfies Element[],
});

// With nothing drawn the filter stands at the crest of the winding, sqrt(2) times its RMS volts (F16: no-load DC 1.41 V).
it.each([
  [350, 367.5],
  [367.5, 350],
  [350, 315],
])("a filter without a bleeder, started from the charge of %d V, ends at the crest of %d V", (from, to) => {
  const warmStart = solveSteady(unloaded(from));
  const volts = solveSteady(unloaded(to), { warmStart }).points.get("k")?.meanVolts ?? 0;
  expect(volts / (Math.SQRT2 * to)).toBeGreaterThan(0.99);
  expect(volts / (Math.SQRT2 * to)).toBeLessThan(1.0005);
});
