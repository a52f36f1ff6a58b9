import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts, universalParts } from "../../testing/supply.ts";
import { lineCapacitorLeakage } from "./line-capacitor-leakage.ts";

const twoWire = {
  W1: {
    marked: "2-wire cord",
    pins: { "hot-in": "line hot", "hot-out": "fuse in", "neutral-in": "line neutral", "neutral-out": "primary 2" },
  },
};
const bridge = (name: string, marked: string, point = "primary 1") => ({
  name,
  kind: "capacitor" as const,
  marked,
  tolerance: "0 %",
  between: [point, "chassis"] as [string, string],
});
const run = (more: Parameters<typeof supplyParts>[1], changes: Parameters<typeof supplyParts>[0] = twoWire) =>
  lineCapacitorLeakage.run(modelOf({ parts: supplyParts(changes, more) }))[0];

describe("line-capacitor-leakage", () => {
  // Expected currents: I = 2 pi f C V, table 6.3 of the reference: 126 V 60 Hz: 10 nF 0.475 mA, 22 nF 1.045 mA, 50 nF 2.375 mA, 2.2 nF 0.105 mA.
  it("finds 22 nF too much for a two-wire set (ANSI C101: 0.5 mA) and for a three-wire one (0.75 mA)", () => {
    const two = run([bridge("C9", "22 nF Y2")]);
    expect(two).toMatchObject({ severity: "replace", holds: "service", figures: [{ limit: 0.5e-3 }] });
    expect(two?.figures[0]?.value).toBeCloseTo(1.045e-3, 6);
    expect(run([bridge("C9", "22 nF Y2")], {})).toMatchObject({ severity: "replace", figures: [{ limit: 0.75e-3 }] });
  });

  it("adds all of them", () => {
    const finding = run([bridge("C8", "10 nF Y2"), bridge("C9", "10 nF Y2", "primary 2")]);
    expect(finding?.figures[0]?.value).toBeCloseTo(0.95e-3, 5);
    expect(finding?.severity).toBe("replace");
  });

  it("passes 10 nF with a remark and 2.2 nF without", () => {
    expect(run([bridge("C9", "10 nF Y2")])?.severity).toBe("watch");
    const small = run([bridge("C9", "2.2 nF Y2")]);
    expect(small?.severity).toBe("good");
    expect(small?.figures[0]?.value).toBeCloseTo(0.105e-3, 6);
  });

  it("takes more than 5 mA for a danger", () => {
    expect(run([bridge("C9", "0.25 uF Y2")])).toMatchObject({ severity: "danger", holds: "full-line" });
  });

  it("counts the resistor beside the capacitor of a set without a transformer", () => {
    const model = modelOf({
      reference: "B-",
      chassis: { isolation: "transformerless" },
      parts: universalParts({ C9: { marked: "4.7 nF Y2", tolerance: "0 %" }, R9: { tolerance: "0 %" } }),
    });
    // 4.7 nF: 0.223 mA; 126 V / 220 kohm = 0.573 mA; together 0.615 mA.
    expect(lineCapacitorLeakage.run(model)[0]?.figures[0]?.value).toBeCloseTo(0.615e-3, 5);
  });

  it("does not apply without such parts", () => {
    expect(run([])).toBeUndefined();
  });
});
