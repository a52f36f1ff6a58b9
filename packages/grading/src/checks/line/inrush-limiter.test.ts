import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { universalParts } from "../../testing/supply.ts";
import { inrushLimiter } from "./inrush-limiter.ts";

/** Silicon half-wave set: 120 V, 10 ohm, 47 uF; the limiter between switch and surge resistor. */
function run(marked: string, filter = "47 uF 200 V electrolytic") {
  const changes = {
    S1: { between: ["switch in", "limiter"] as [string, string] },
    V1: { type: "silicon 1000 V 1 A", pins: { a: "plate", b: "B+1" } },
    R1: { marked: "10 ohm 5 W" },
    C1: { marked: filter },
  };
  const parts = universalParts(changes, [{ name: "TH1", kind: "thermistor", marked, between: ["limiter", "line 1"] }]);
  return inrushLimiter.run(modelOf({ parts, reference: "B-", chassis: { isolation: "transformerless" } }))[0];
}

describe("inrush-limiter", () => {
  it("says that 2 A is a steady rating, with the peaks by Ohm's law", () => {
    const finding = run("50 ohm 0.5 A 20 J");
    expect(finding?.severity).toBe("good");
    const peaks = finding?.figures.filter(({ label }) => label.startsWith("peak")).map(({ value }) => value ?? 0);
    // (178.2 - 1) V over 10 + 50 + 0.05 ohm = 2.95 A; without it over 10.06 ohm about 17.6 A.
    expect(peaks?.[0]).toBeCloseTo(2.95, 1);
    expect(peaks?.[1] ?? 0).toBeGreaterThan(17);
    expect(peaks?.[1] ?? 0).toBeLessThan(17.8);
    expect(finding?.why).toContain("does not hold the surge at that");
  });

  it("finds too small a current rating and too little energy", () => {
    expect(run("50 ohm 0.1 A 20 J")).toMatchObject({
      severity: "replace",
      holds: "full-line",
      figures: [{ limit: 0.1 }, {}, {}, {}, {}, {}, {}],
    });
    // C V^2 / 2: 470 uF at about 165 V, and 40 uF: 6.5 to 7.5 J.
    const energy = run("50 ohm 0.5 A 2 J", "470 uF 200 V electrolytic");
    expect(energy?.title).toContain("energy");
    expect(energy?.figures[1]?.value ?? 0).toBeGreaterThan(6);
    expect(energy?.figures[1]?.value ?? 0).toBeLessThan(8);
  });

  it("warns of one that never gets warm, and asks for missing ratings", () => {
    expect(run("50 ohm 5 A 20 J")?.severity).toBe("watch");
    expect(run("50 ohm")?.severity).toBe("unmeasured");
  });

  it("does not apply without a limiter", () => {
    expect(inrushLimiter.run(modelOf({ parts: universalParts(), reference: "B-", chassis: { isolation: "transformerless" } }))).toEqual([]);
  });
});
