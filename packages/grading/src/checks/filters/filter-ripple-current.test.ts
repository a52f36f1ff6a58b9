import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts, universalParts } from "../../testing/supply.ts";
import { filterRippleCurrent } from "./filter-ripple-current.ts";

const run = (changes: Parameters<typeof supplyParts>[0]) =>
  filterRippleCurrent.run(modelOf({ parts: supplyParts(changes) })).filter(({ part }) => part === "C1");

describe("filter-ripple-current", () => {
  it("computes 1.2 to 1.8 times the direct current in the first capacitor (reference 9.7) and passes 20 uF", () => {
    const [finding] = run({});
    expect(finding?.figures[0]?.value ?? 0).toBeGreaterThan(1.2 * 0.064);
    expect(finding?.figures[0]?.value ?? 0).toBeLessThan(1.8 * 0.064);
    expect(finding?.severity).toBe("good");
    // Guide: 0.05 A * sqrt 20.
    expect(finding?.figures[0]?.limit).toBeCloseTo(0.2236, 4);
  });

  it("finds 4 uF overworked (0.1 A guide) at 120 mA, and a half-wave set's 20 uF at 100 mA", () => {
    expect(run({ C1: { marked: "4 uF 450 V electrolytic" }, LOAD: { marked: "120 mA" } })[0]?.severity).toBe("watch");
    const half = filterRippleCurrent.run(
      modelOf({
        parts: universalParts({ C1: { marked: "20 uF 150 V electrolytic" }, LOAD: { marked: "100 mA" } }),
        reference: "B-",
        chassis: { isolation: "transformerless" },
      }),
    );
    const first = half.find(({ part }) => part === "C1");
    // Half-wave, 50 to 60 Hz: 0.8 of the guide, 0.04 A * sqrt 20 = 0.179 A; half-wave pulses make 1.8 to 2.5 times the direct current.
    expect(first?.severity).toBe("watch");
    expect(first?.figures[0]?.limit).toBeCloseTo(0.1789, 4);
    expect(first?.figures[0]?.value ?? 0).toBeGreaterThan(1.8 * 0.1);
    expect(first?.figures[0]?.value ?? 0).toBeLessThan(2.5 * 0.1);
  });

  it("does not apply to film, nor where hardly any current flows", () => {
    expect(run({ C1: { marked: "20 uF 600 V film" } })).toEqual([]);
    expect(filterRippleCurrent.run(modelOf({ parts: supplyParts() })).map(({ part }) => part)).not.toContain("C2");
  });
});
