import type { Network } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { FloatingGrid, prepare } from "./prepare.ts";
import { steadyReadings } from "./steadyReadings.ts";

/** A bridge of ideal enough diodes on a stiff source: 100 V RMS, a capacitor, a load; and a high divider off it. */
const supply = (extra: Network["elements"] = []): Network => ({
  reference: "chassis",
  elements: [
    { kind: "voltage-source", id: "line", nodes: ["ac 1", "ac 2"], rmsVolts: 100, hertz: 60 },
    ...(
      [
        ["D1", "ac 1", "B+"],
        ["D2", "ac 2", "B+"],
        ["D3", "chassis", "ac 1"],
        ["D4", "chassis", "ac 2"],
      ] as const
    ).map(([id, a, k]) => ({ kind: "diode" as const, id, nodes: [a, k] as const, saturationAmps: 7e-9, emission: 1.8, ohms: 0.035 })),
    { kind: "resistor", id: "R0", nodes: ["ac 1", "chassis"], ohms: 1e6 },
    { kind: "resistor", id: "R9", nodes: ["ac 2", "chassis"], ohms: 1e6 },
    { kind: "capacitor", id: "C1", nodes: ["B+", "chassis"], farads: 100e-6, esrOhms: 0.1 },
    { kind: "resistor", id: "R1", nodes: ["B+", "chassis"], ohms: 5000 },
    { kind: "resistor", id: "R2", nodes: ["B+", "screen"], ohms: 1e6 },
    { kind: "resistor", id: "R3", nodes: ["screen", "chassis"], ohms: 1e6 },
    { kind: "capacitor", id: "C2", nodes: ["screen", "chassis"], farads: 1e-7 },
    ...extra,
  ],
});
const cold = { values: new Map([["C1", 100]]) };

describe("steady readings", () => {
  it("give the peak less two diodes and half the ripple, and half of it at the divider", async () => {
    const { points } = await steadyReadings(supply(), 60, cold);
    // Peak 141.42 V, two diodes 0.7 to 0.9 V each in their pulses; ripple I / (2 f C) = 0.028 / (120 * 100 uF) = 2.3 V less the conduction angle.
    expect(points.get("B+")?.volts).toBeGreaterThan(141.4 - 1.9 - 1.3);
    expect(points.get("B+")?.volts).toBeLessThan(141.4 - 1.3 - 0.8);
    expect(points.get("B+")?.ripple).toBeGreaterThan(1.7);
    expect(points.get("B+")?.ripple).toBeLessThan(2.3);
    expect((points.get("screen")?.volts ?? 0) / (points.get("B+")?.volts ?? 1)).toBeCloseTo(0.5, 3);
  });

  it("say what a meter does to a high divider as closely as a meter in the simulated circuit shows it", async () => {
    const alone = await steadyReadings(supply(), 60, cold);
    const metered = await steadyReadings(supply([{ kind: "voltmeter", id: "meter", nodes: ["screen", "chassis"], ohms: 10e6 }]), 60, cold);
    const { volts, ohms } = alone.points.get("screen") ?? { volts: 0, ohms: 0 };
    const shown = metered.points.get("screen")?.volts ?? 0;
    expect(shown).toBeLessThan(0.97 * volts);
    expect((volts * 10e6) / (10e6 + ohms) / shown).toBeCloseTo(1, 3);
  });

  it("find a slow network as well as a quick one", async () => {
    // 100 uF and 2 Mohm: 200 s of its own time, which a run of a period has to be led to.
    const slow = supply().elements.filter(({ id }) => id !== "R1");
    const { points } = await steadyReadings({ reference: "chassis", elements: slow }, 60, cold);
    expect(points.get("B+")?.volts).toBeGreaterThan(139.5);
    expect(points.get("B+")?.volts).toBeLessThan(141.42);
  });
});

it("a grid that only insulation holds has no voltage", () => {
  const parameters = { mu: 100, ex: 1.4, kg1: 1060, kp: 600, kvb: 300 };
  const tube = { kind: "triode", id: "V1", nodes: { plate: "B+", grid: "g", cathode: "chassis" }, parameters } as const;
  expect(() => prepare(supply([tube, { kind: "capacitor", id: "C5", nodes: ["ac 1", "g"], farads: 1e-8 }]), 60)).toThrow(FloatingGrid);
});
