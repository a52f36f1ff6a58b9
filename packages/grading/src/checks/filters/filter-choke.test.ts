import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { filterChoke } from "./filter-choke.ts";

const run = (changes: Parameters<typeof supplyParts>[0]) => filterChoke.run(modelOf({ parts: supplyParts(changes) }));

describe("filter-choke", () => {
  it("passes 64 mA through a 100 mA choke, with drop and heat by Ohm's law", () => {
    const [finding] = run({ R1: { marked: "1 Mohm 1 W" } });
    expect(finding?.severity).toBe("good");
    expect(finding?.figures.map(({ value }) => value)).toEqual([
      expect.closeTo(0.0604, 3),
      expect.closeTo(0.0604 * 300, 0),
      expect.closeTo(0.0604 ** 2 * 300, 1),
    ]);
  });

  it("finds an overloaded choke and asks for an unknown rating", () => {
    expect(run({ L1: { marked: "10 H 40 mA 300 ohm" } })[0]).toMatchObject({ severity: "replace", holds: "full-line" });
    expect(run({ L1: { marked: "10 H 60 mA 300 ohm" } })[0]?.severity).toBe("watch");
    expect(run({ L1: { marked: "10 H 300 ohm" } })[0]?.severity).toBe("unmeasured");
  });

  it("holds a choke-input filter against its critical inductance: R / 1131 at 60 Hz", () => {
    const light = run({ C1: null, R1: { marked: "100 kohm 5 W" } }).find(({ figures }) => figures[0]?.unit === "H");
    // Only 100 kohm and the choke's 300 ohm in tubes-out: 100.3 k / 1131 = 88.7 H, more than 10 H.
    expect(light).toMatchObject({ severity: "adjust", condition: "tubes-out" });
    expect(light?.figures[0]?.limit).toBeCloseTo(88.7, 0);
    // Soaring: above 0.9 of the RMS by much, towards 1.41.
    expect((light?.figures[1]?.value ?? 0) / (light?.figures[2]?.value ?? 1)).toBeGreaterThan(1.1);
    const bled = run({ C1: null, R1: { marked: "10 kohm 25 W" } }).find(({ figures }) => figures[0]?.unit === "H");
    expect(bled?.severity).toBe("good");
  });

  it("does not ask for it behind a capacitor, and does not apply to RF chokes", () => {
    expect(run({}).every(({ figures }) => figures[0]?.unit === "A")).toBe(true);
    expect(run({ L1: { marked: "2.5 mH 100 mA 50 ohm" } })).toEqual([]);
  });
});
