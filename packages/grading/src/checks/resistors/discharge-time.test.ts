import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { storedCharges } from "../shared/discharge.ts";
import { dischargeTime } from "./discharge-time.ts";

const run = (changes = {}) => dischargeTime.run(modelOf({ parts: supplyParts(changes) }));

describe("storedCharges", () => {
  it("is R C ln(V / 60) for a single capacitor (t = RC ln(V0/V); 40 uF, 220 kohm, 450 V: 17.7 s in the reference table)", () => {
    const model = modelOf({
      parts: [
        { name: "BT", kind: "battery", between: ["s", "chassis"], marked: "450 V" },
        { name: "S1", kind: "switch", role: "lineSwitch", between: ["s", "B+"] },
        { name: "C1", kind: "capacitor", between: ["B+", "chassis"], marked: "40 uF 500 V" },
        { name: "R1", kind: "resistor", between: ["B+", "chassis"], marked: "220 kohm 2 W" },
      ],
    });
    const [stored] = storedCharges(model, "restored");
    expect(stored?.volts).toBeCloseTo(450, 0);
    expect(stored?.seconds).toBeCloseTo(17.7, 1);
    // C V^2 / 2 = 4.05 J.
    expect(stored?.joules).toBeCloseTo(4.05, 2);
    expect(stored?.through()).toEqual(["R1"]);
  });

  it("counts filters joined by a choke together: (20 uF + 20 uF) * 100 kohm = 4 s", () => {
    const stored = storedCharges(modelOf({ parts: supplyParts() }), "restored");
    expect(stored.map(({ part }) => part)).toEqual(["C1", "C2"]);
    for (const { tau } of stored) {
      expect(tau).toBeGreaterThan(3.9);
      expect(tau).toBeLessThan(4.2);
    }
  });
});

describe("discharge-time", () => {
  it("passes a supply with a bleeder", () => {
    const [finding] = run();
    expect(finding).toMatchObject({ severity: "good" });
    // No load, 126 V line: about 446 V; 4 s * ln(446 / 60) = 8 s.
    expect(finding?.figures[0]?.value).toBeGreaterThan(7);
    expect(finding?.figures[0]?.value).toBeLessThan(9.5);
    expect(finding?.why).toContain("R1");
  });
  it("finds a charge that stays: bleeder gone, some 4 J above 400 V", () => {
    const findings = run({ R1: null });
    expect(findings.map(({ part }) => part)).toEqual(["C1", "C2"]);
    // common-practice: receivers were made without a bleeder; warm tubes discharge them.
    expect(findings[0]).toMatchObject({ severity: "watch" });
    expect(findings[0]?.holds).toBeUndefined();
    expect(findings[0]?.why).toContain("violent shock");
    expect(findings[0]?.figures[0]?.value).toBeNull();
  });
  it("holds the full line above 10 J, which may kill: 2 x 100 uF at some 446 V is 20 J", () => {
    const big = { marked: "100 uF 500 V" };
    expect(run({ R1: null, C1: big, C2: big })[0]).toMatchObject({ severity: "danger", holds: "full-line" });
  });
  it("finds a bleeder that has drifted: 2.2 Mohm takes 88 s * ln(446/60) = 177 s", () => {
    const [finding] = run({ R1: { marked: "100 kohm 5 W", measured: { value: "2.2 Mohm" } } });
    expect(finding).toMatchObject({ severity: "watch" });
    expect(finding?.figures[0]?.value).toBeGreaterThan(165);
    expect(finding?.figures[0]?.value).toBeLessThan(190);
  });
  it("does not take a capacitor's leakage for a bleeder", () => {
    expect(
      run({ R1: null, C1: { marked: "20 uF 450 V electrolytic", measured: { leakage: "1 mA", atVolts: "400 V" } } })[0]?.figures[0]?.value,
    ).toBeNull();
  });
  it("does not apply below 60 V", () => {
    const parts = [
      { name: "BT", kind: "battery" as const, between: ["B+", "chassis"] as [string, string], marked: "45 V" },
      { name: "C1", kind: "capacitor" as const, between: ["B+", "chassis"] as [string, string], marked: "1000 uF 63 V" },
    ];
    expect(dischargeTime.run(modelOf({ parts }))).toEqual([]);
  });
});
