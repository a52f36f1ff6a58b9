import { transient } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { siliconSupply, supplyParts, universalParts } from "../../testing/supply.ts";
import { lineCurrent } from "./lineCurrent.ts";
import { lineSide } from "./lineSide.ts";
import { switchOn } from "./switchOn.ts";

describe("switchOn", () => {
  it("takes the crest of the line over the resistance in the way (Ohm's law)", () => {
    const parts = supplyParts({ V1: null, T1: null, C1: null, L1: null, C2: null, R1: null, LOAD: null, W1: { marked: "2-wire" } }, [
      { name: "D1", kind: "rectifier", type: "silicon 1000 V 1 A", between: ["primary 1", "a"] },
      { name: "RS", kind: "resistor", marked: "47 ohm 5 W", between: ["a", "b"] },
      { name: "CX", kind: "capacitor", marked: "47 uF 250 V electrolytic", between: ["b", "primary 2"] },
      { name: "RL", kind: "resistor", marked: "100 kohm 1 W", between: ["b", "primary 2"] },
    ]);
    const model = modelOf({ parts, reference: "primary 2", chassis: { isolation: "transformerless" } });
    const surge = switchOn(model, "restored", { hot: true });
    // 126 V * sqrt 2 = 178.2 V less about 1 V in the diode, over 47 + 0.15 (fuse) + 0.02 (switch) + 0.035 ohm: 3.75 A.
    expect(surge?.linePeakAmps).toBeGreaterThan(3.7);
    expect(surge?.linePeakAmps).toBeLessThan(3.78);
    // 1/2 * 47 uF * (about 176 V)^2 = 0.73 J; over 47.5 ohm 0.0153 A2s.
    expect(surge?.filterJoules).toBeCloseTo(0.73, 1);
    expect(surge?.lineAmpsSquaredSeconds).toBeCloseTo(0.0153, 3);
  });

  it.each([
    ["full-wave silicon behind a transformer", () => modelOf({ parts: siliconSupply("silicon 1000 V 1 A") })],
    [
      "half-wave silicon on the line",
      () =>
        modelOf({
          parts: universalParts({ V1: { type: "silicon 1000 V 1 A", pins: { a: "plate", b: "B+1" } } }),
          reference: "B-",
          chassis: { isolation: "transformerless" },
        }),
    ],
  ])("bounds what marching through the first cycles from empty filters gives: %s", (_, build) => {
    const model = build();
    const surge = switchOn(model, "restored", { hot: true });
    const { network } = model.compile({ life: "restored", condition: "operating", line: "high" });
    const elements = network.elements.filter(({ kind }) => kind !== "current-source");
    const march = [0.5, 1, 1.5].map((phase) =>
      transient({ ...network, elements }, { durationSeconds: 0.08, stepSeconds: 1 / 60 / 256, phaseRadians: phase * Math.PI }).elements.get(
        "line",
      ),
    );
    const peak = Math.max(...march.map((line) => Math.max(line?.maxAmps ?? 0, -(line?.minAmps ?? 0))));
    expect((surge?.linePeakAmps ?? 0) / peak).toBeGreaterThan(0.99);
    expect((surge?.linePeakAmps ?? 0) / peak).toBeLessThan(1.12);
    const integral = Math.max(...march.map((line) => line?.i2t ?? 0));
    expect((surge?.lineAmpsSquaredSeconds ?? 0) / integral).toBeGreaterThan(1);
    expect((surge?.lineAmpsSquaredSeconds ?? 0) / integral).toBeLessThan(1.8);
  });

  it("passes nothing through cold cathodes", () => {
    const model = modelOf({ parts: supplyParts() });
    const cold = switchOn(model, "restored", { hot: false });
    const hot = switchOn(model, "restored", { hot: true });
    expect(cold?.filterJoules).toBe(0);
    expect(hot?.filterJoules ?? 0).toBeGreaterThan(1);
    expect(hot?.elements.get("V1/plate-1")?.maxAmps ?? 0).toBeGreaterThan(0.5);
    expect(cold?.elements.get("V1/plate-1")).toBeUndefined();
  });
});

describe("lineCurrent", () => {
  it("feeds what the secondaries take: power balance within the copper's heat", () => {
    const current = lineCurrent(modelOf({ parts: supplyParts() }), "restored");
    // Load 60 mA and bleeder at 300 to 330 V: 20 to 22 W; filament 10 W; copper and rectifier the rest.
    expect(current?.watts ?? 0).toBeGreaterThan(30);
    expect(current?.watts ?? 0).toBeLessThan(50);
    expect(current?.rmsAmps ?? 0).toBeGreaterThan((current?.watts ?? 0) / 126);
  });

  it("adds the heater string of a set without a transformer", () => {
    const model = modelOf({ parts: universalParts(), reference: "B-", chassis: { isolation: "transformerless" } });
    expect(lineCurrent(model, "restored")?.stringAmps).toBe(0.15);
  });
});

describe("lineSide", () => {
  it("lists the hot conductor's parts from the plug inwards and knows what can be touched", () => {
    const side = lineSide(modelOf({ parts: supplyParts() }), "restored");
    expect(side.hotParts.map(({ part }) => part.id)).toEqual(["F1", "S1"]);
    expect(side.neutral.has("primary 2")).toBe(true);
    expect(side.frame.has("chassis")).toBe(true);
    expect(side.hot.has("plate 1")).toBe(false);
  });
});
