import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { filterValueChange } from "./filter-value-change.ts";

const run = (changes: Parameters<typeof supplyParts>[0]) => filterValueChange.run(modelOf({ parts: supplyParts(changes) }));

describe("filter-value-change", () => {
  it("shows ripple before and after: it goes with 1 / C (F12)", () => {
    const [finding] = run({ C1: { fitted: "40 uF 500 V" } });
    const [, before, after] = finding?.figures.map(({ value }) => value ?? 0) ?? [];
    expect(before).toBeGreaterThan(5);
    expect((before ?? 0) / (after ?? 1)).toBeGreaterThan(1.8);
    expect((before ?? 0) / (after ?? 1)).toBeLessThan(2.2);
    expect(finding?.figures.some(({ label }) => label.includes("pulses of V1"))).toBe(true);
  });

  it("takes 22 uF for 20 uF as no change, 100 uF as far too much, 10 uF as too little", () => {
    expect(run({ C1: { fitted: "22 uF 500 V" } })[0]).toMatchObject({ severity: "good", figures: [] });
    expect(run({ C2: { fitted: "100 uF 500 V" } })[0]).toMatchObject({ severity: "adjust", part: "C2" });
    expect(run({ C2: { fitted: "10 uF 500 V" } })[0]?.severity).toBe("adjust");
    expect(run({ C2: { fitted: "40 uF 500 V" } })[0]?.severity).toBe("good");
  });

  it("refuses a value that drives the rectifier beyond its peak", () => {
    const stiff = {
      primary: { between: ["primary 1", "primary 2"] as [string, string], marked: "120 V", measured: "0.5 ohm" },
      hv: { between: ["plate 1", "chassis", "plate 2"], marked: "300-0-300 V", measured: "5 ohm" },
    };
    expect(
      run({ T1: { windings: stiff }, LOAD: { marked: "120 mA" }, C1: { marked: "4 uF 500 V electrolytic", fitted: "220 uF 500 V" } })[0],
    ).toMatchObject({ severity: "replace", holds: "full-line" });
  });

  it("does not apply where nothing was changed", () => {
    expect(run({})).toEqual([]);
  });
});
