import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { outputParts } from "../../testing/audioParts.ts";
import { modelOf, type TestJob } from "../../testing/model.ts";
import { referenceDataset } from "../../testing/referenceDataset.ts";
import { couplingCapacitorLeakage } from "./coupling-capacitor-leakage.ts";

const run = (changes = {}, readings: NonNullable<TestJob["readings"]> = []) =>
  couplingCapacitorLeakage.run(modelOf({ parts: outputParts(changes), readings }, referenceDataset()));
const grid = (value: string, life: "found" | "restored" = "found") => ({ at: "grid", quantity: "dc-volts" as const, value, life });

describe("coupling-capacitor-leakage", () => {
  it("works out the leakage from a positive grid: 449 kohm * (200 V - 0.94 V) / 0.94 V", () => {
    // 470 kohm with 10 Mohm of meter: 448.9 kohm; the reference example gives 0.94 V for 200 V, 470 kohm and 100 Mohm.
    const [finding] = run({}, [grid("0.94 V")]);
    expect(finding).toMatchObject({ severity: "replace", part: "C1", holds: "full-line" });
    expect(finding?.figures[1]?.value).toBeGreaterThan(94.5e6);
    expect(finding?.figures[1]?.value).toBeLessThan(95.6e6);
    expect(finding?.figures[0]?.value).toBeGreaterThan(0.97);
    expect(finding?.figures[0]?.value).toBeLessThan(0.99);
    expect(finding?.action).toContain("Pull V1");
  });
  it("reads the grid beyond a wire or a stopper that is not there", () => {
    const pins = { plate: "plate", screen: "B+", grid: "pin 5", cathode: "cathode" };
    const parts = [...outputParts({ V1: { pins } }), { name: "W1", kind: "wire", between: ["grid", "pin 5"] } as const];
    const readings = [{ at: "pin 5", quantity: "dc-volts" as const, value: "0.94 V", life: "found" as const }];
    const [finding] = couplingCapacitorLeakage.run(modelOf({ parts: parts as JobPart[], readings }, referenceDataset()));
    expect(finding).toMatchObject({ severity: "replace", part: "C1" });
  });
  it.each([
    // Millman: 265 V over 4.7 Mohm into 470 kohm and 10 Mohm of meter gives 23.1 V; 28 V needs (200 - 28) V * 409.8 kohm / 4.9 V = 14.4 Mohm.
    ["is its own at", "23.1 V", undefined],
    ["is lifted by a leak at", "28 V", 14.4e6],
  ] as const)("a grid that a divider holds positive %s %s", (_what, value, leakOhms) => {
    const divider = { name: "R9", kind: "resistor", marked: "4.7 Mohm 1% 0.5 W", between: ["B+", "grid"] } as const;
    const parts = [...outputParts({ R1: { marked: "2.2 kohm 5 W" }, R2: { marked: "470 kohm 1% 0.5 W" } }), divider] as JobPart[];
    const [finding] = couplingCapacitorLeakage.run(modelOf({ parts, readings: [grid(value)] }, referenceDataset()));
    expect(finding?.severity).toBe(leakOhms === undefined ? "good" : "replace");
    if (leakOhms === undefined) return;
    expect(finding?.figures[1]?.value).toBeGreaterThan(0.9 * leakOhms);
    expect(finding?.figures[1]?.value).toBeLessThan(1.1 * leakOhms);
  });
  it("judges a measured leakage: 14 Mohm lifts the grid by 200 * 0.47 / 14.47 = 6.5 V and burns the tube", () => {
    const [finding] = run({ C1: { marked: "0.02 uF 400 V paper", measured: { leakage: "14 Mohm", atVolts: "250 V" } } });
    expect(finding).toMatchObject({ severity: "danger", part: "C1" });
    expect(finding?.figures[0]?.value).toBeCloseTo(6.5, 0);
    const [before, after] = [finding?.figures[2]?.value ?? 0, finding?.figures[3]?.value ?? 0];
    expect(after).toBeGreaterThan(before * 1.2);
  });
  it("passes 5 Gohm, and a grid at 20 mV", () => {
    expect(
      run({ C1: { marked: "0.02 uF 400 V paper", measured: { leakage: "5 Gohm", atVolts: "250 V" } } }).map(({ severity }) => severity),
    ).toEqual(["good"]);
    expect(run({}, [grid("0.02 V")]).map(({ severity }) => severity)).toEqual(["good"]);
  });
  it("judges a coupling capacitor to a tube that the job counts as a load: 9 Mohm and 470 kohm on 200 V give 9.9 V", () => {
    const [finding] = run({
      V1: null,
      T1: null,
      R1: null,
      C1: { marked: "0.02 uF 600 V paper", measured: { leakage: "9 Mohm", atVolts: "250 V" } },
    });
    expect(finding).toMatchObject({ severity: "replace", part: "C1", holds: "service" });
    expect(finding?.figures[0]?.value).toBeGreaterThan(9.7);
    expect(finding?.figures[0]?.value).toBeLessThan(10);
    expect(finding?.title).toContain("the tube behind grid");
  });
  it("does not blame a new capacitor for a reading of before", () =>
    expect(run({ C1: { marked: "0.02 uF 400 V paper", fitted: "0.022 uF 630 V film" } }, [grid("5 V")])).toEqual([]));
  it("does not apply where neither reading nor leakage is known", () => expect(run()).toEqual([]));
});
