import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { lineVoltsOf, poweredConditions, stresses, worst } from "./stress.ts";

const alternating = () =>
  modelOf({
    parts: [
      { name: "R1", kind: "resistor", between: ["line hot", "line neutral"], marked: "100 ohm 200 W" },
      { name: "D1", kind: "rectifier", type: "silicon 1000 V 1 A", between: ["line hot", "k"] },
      { name: "R2", kind: "resistor", between: ["k", "line neutral"], marked: "1 kohm 50 W" },
    ],
    reference: "line neutral",
  });

describe("stresses", () => {
  it("are those of a sine: 126 V RMS on 100 ohm, crest 178.2 V, 1.26 A, 158.8 W", () => {
    const model = alternating();
    const load = worst(stresses(model, "restored").get("R1"), "watts");
    expect(lineVoltsOf(model, "high")).toBe(126);
    expect(load).toMatchObject({ lineVolts: 126 });
    expect(load?.maxVolts).toBeCloseTo(178.19, 0);
    expect(load?.acVolts).toBeCloseTo(126, 1);
    expect(load?.rmsAmps).toBeCloseTo(1.26, 2);
    expect(load?.watts).toBeCloseTo(158.8, 0);
    expect(load?.meanVolts).toBeCloseTo(0, 1);
  });

  it("give a rectifier the inverse crest: half wave without a filter, 178.2 V, mean of V / (pi R)", () => {
    const diode = worst(stresses(alternating(), "restored").get("D1"), "inverseVolts");
    expect(diode?.inverseVolts).toBeGreaterThan(177);
    expect(diode?.inverseVolts).toBeLessThan(178.5);
    // (178.2 V - about 0.7 V) / (pi * 1 kohm) = 56.5 mA.
    expect(diode?.meanAmps).toBeGreaterThan(0.0555);
    expect(diode?.meanAmps).toBeLessThan(0.0568);
  });

  it("cover every powered condition, one entry for each plate, and no filament", () => {
    const model = modelOf({ parts: supplyParts() });
    expect(poweredConditions(model).map(({ id }) => id)).toEqual(["tubes-out", "standby", "operating"]);
    const entries = stresses(model, "restored").get("V1") ?? [];
    expect(entries.map(({ condition }) => condition)).toEqual(["tubes-out", "tubes-out", "standby", "standby", "operating", "operating"]);
  });

  it("are worked out once a model", () => {
    const model = alternating();
    expect(stresses(model, "restored")).toBe(stresses(model, "restored"));
    expect(stresses(model, "restored", "low")).not.toBe(stresses(model, "restored"));
  });
});

describe("worst", () => {
  it("takes the largest magnitude and nothing from nothing", () => {
    const entries = stresses(alternating(), "restored").get("R2") ?? [];
    expect(worst(entries, "watts")?.watts).toBe(Math.max(...entries.map(({ watts }) => watts)));
    expect(worst([], "watts")).toBeUndefined();
    expect(worst(undefined, "watts")).toBeUndefined();
  });
});
