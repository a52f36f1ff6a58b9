import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { coldOhms, ohmsWithout, predictCold } from "./coldOhms.ts";

/** Two resistors of 10 k in parallel between a and the chassis, and a point that nothing joins to them. */
const model = modelOf({
  parts: [
    { name: "R1", kind: "resistor", between: ["a", "chassis"], marked: "10 kohm 10%" },
    { name: "R2", kind: "resistor", between: ["a", "chassis"], marked: "10 kohm 10%" },
    { name: "C1", kind: "capacitor", between: ["a", "b"], marked: "0.1 uF" },
    { name: "R3", kind: "resistor", between: ["b", "c"], marked: "1 kohm" },
    { name: "BT", kind: "battery", between: ["d", "chassis"], marked: "9 V" },
    { name: "R4", kind: "resistor", between: ["d", "chassis"], marked: "1 kohm" },
  ],
});
const compiled = model.compile({ life: "restored", condition: "cold", line: "actual" });

describe("cold resistances", () => {
  it("are those of parallel paths: 5 k, window within 10 % of it", () => {
    expect(coldOhms(model, "restored", "a", "chassis")).toBeCloseTo(5e3, 3);
    const window = predictCold(model, "restored", "a", "chassis");
    expect(window?.nominal).toBeCloseTo(5e3, 3);
    // Each 10 % half-width: sigma = 0.1 / sqrt 3 of half the value each, both and a meter of 1 %: 5 k * 4.2 %.
    expect(window?.sigma).toBeCloseTo(5e3 * Math.hypot(0.1 / Math.sqrt(3) / Math.SQRT2, 0.01), -1);
  });
  it("go up when one is taken out, and open when both are", () => {
    expect(ohmsWithout(compiled, "a", "chassis", new Set(["R1"]))).toBeCloseTo(10e3, 3);
    expect(ohmsWithout(compiled, "a", "chassis", new Set(["R1", "R2"]))).toBe(Number.POSITIVE_INFINITY);
  });
  it("are open across a capacitor and to a point that nothing touches, and nothing at one point", () => {
    expect(coldOhms(model, "restored", "a", "b")).toBe(Number.POSITIVE_INFINITY);
    expect(coldOhms(model, "restored", "a", "nowhere")).toBe(Number.POSITIVE_INFINITY);
    expect(coldOhms(model, "restored", "a", "a")).toBe(0);
  });
});
