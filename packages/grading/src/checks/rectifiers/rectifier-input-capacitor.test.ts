import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { siliconSupply, supplyParts } from "../../testing/supply.ts";
import { rectifierInputCapacitor } from "./rectifier-input-capacitor.ts";

const run = (parts: ReturnType<typeof supplyParts>) => rectifierInputCapacitor.run(modelOf({ parts }));

describe("rectifier-input-capacitor", () => {
  // Limit: 5Y3GT 20 uF (reference table 10.5).
  it("passes 20 uF, remarks on 22 uF and refuses 47 uF behind a 5Y3GT", () => {
    expect(run(supplyParts())[0]?.severity).toBe("good");
    expect(run(supplyParts({ C1: { fitted: "22 uF 450 V" } }))[0]?.severity).toBe("watch");
    expect(run(supplyParts({ C1: { fitted: "25 uF 450 V" } }))[0]?.severity).toBe("replace");
    const finding = run(supplyParts({ C1: { fitted: "47 uF 450 V" } }))[0];
    expect(finding).toMatchObject({ severity: "replace", holds: "full-line", part: "C1" });
    expect(finding?.figures[0]?.limit).toBeCloseTo(20e-6, 12);
    expect(finding?.figures[0]?.margin).toBeCloseTo(-1.35, 9);
  });

  it("leaves the second capacitor free, and a capacitor behind a choke", () => {
    expect(run(supplyParts({ C2: { fitted: "100 uF 450 V" } })).map(({ severity }) => severity)).toEqual(["good"]);
    expect(run(supplyParts({ C1: null, C2: { fitted: "100 uF 450 V" } }))).toEqual([]);
  });

  it("adds capacitors in parallel, also through a small surge resistor", () => {
    const more = [
      { name: "C3", kind: "capacitor" as const, marked: "10 uF 450 V", between: ["surge", "chassis"] as [string, string] },
      { name: "R3", kind: "resistor" as const, marked: "47 ohm 2 W", between: ["B+1", "surge"] as [string, string] },
    ];
    expect(run(supplyParts({}, more))[0]?.figures[0]?.value).toBeCloseTo(30e-6, 12);
  });

  it("counts only what returns to the winding when a choke lies in the negative lead", () => {
    const winding = {
      primary: { between: ["line hot", "line neutral"], marked: "120 V" },
      hv: { between: ["a", "B-", "b"], marked: "300-0-300 V 90 mA" },
    };
    const finding = run([
      { name: "T1", kind: "transformer", windings: winding },
      { name: "V1", kind: "rectifier", type: "5Y3GT", pins: { "plate-1": "a", "plate-2": "b", cathode: "B+" } },
      { name: "C1", kind: "capacitor", marked: "16 uF 450 V", between: ["B+", "B-"] },
      { name: "L1", kind: "inductor", marked: "15 H 1000 ohm", between: ["chassis", "B-"] },
      { name: "C2", kind: "capacitor", marked: "16 uF 450 V", between: ["B+", "chassis"] },
      { name: "R1", kind: "resistor", marked: "5 k 20 W", between: ["B+", "chassis"] },
    ])[0];
    expect(finding).toMatchObject({ severity: "good", part: "C1" });
    expect(finding?.figures[0]?.value).toBeCloseTo(16e-6, 12);
  });

  it("judges the plan apart from what stands", () => {
    const findings = run(supplyParts({ C1: { fitted: { marked: "47 uF 450 V", planned: true } } }));
    expect(findings.map(({ life, severity }) => [life, severity])).toEqual([
      ["restored", "good"],
      ["planned", "replace"],
    ]);
  });

  it("does not apply to silicon", () => {
    expect(run(siliconSupply("silicon 1000 V 1 A", { C1: { marked: "470 uF 450 V electrolytic" } }))).toEqual([]);
  });
});
