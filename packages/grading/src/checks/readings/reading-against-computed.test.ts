import type { FailureNote, StageTemplate } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../../testing/model.ts";
import { smallDataset } from "../../testing/smallDataset.ts";
import { readingAgainstComputed } from "./reading-against-computed.ts";

type JobReading = NonNullable<TestJob["readings"]>[number];

/** 300 V through 10 k to B+, 20 k from there to the chassis: 200 V at B+ (voltage divider). */
const parts: TestJob["parts"] = [
  { name: "BT", kind: "battery", between: ["raw", "chassis"], marked: "300 V" },
  { name: "R1", kind: "resistor", role: "dropping", between: ["raw", "B+"], marked: "10 kohm 5% 5 W" },
  { name: "R2", kind: "resistor", between: ["B+", "chassis"], marked: "20 kohm 5% 5 W" },
  { name: "C1", kind: "capacitor", role: "decoupling", between: ["B+", "chassis"], marked: "10 uF 350 V" },
];
const at = (value: string, more: Partial<JobReading> = {}): JobReading => ({ at: "B+", quantity: "dc-volts", value, ...more });
const run = (...readings: JobReading[]) => readingAgainstComputed.run(modelOf({ parts, readings }));

describe("reading-against-computed", () => {
  it("passes 205 V where 200 V is computed, in one line for all", () => {
    const findings = run(at("205 V"), at("300 V", { at: "raw" }));
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ severity: "good", title: "2 readings agree with the computed chassis" });
  });

  it("only watches one that the worst case still reaches", () => {
    // Worst case: +5 % battery, R1 -5 %, R2 +5 %: 315 V * 21 / 30.5 = 216.9 V.
    const [finding] = run(at("216 V"));
    expect(finding).toMatchObject({ severity: "watch", point: "B+" });
    expect(finding?.holds).toBeUndefined();
  });

  it("calls a supply line below 75 % of its lowest value dangerous, with the cold check to make next", () => {
    const [finding] = run(at("120 V"));
    expect(finding).toMatchObject({ severity: "danger", holds: "full-line", point: "B+" });
    expect(finding?.figures[1]?.value).toBeCloseTo(200, -1);
    const cold = finding?.figures.find(({ unit }) => unit === "ohm");
    // The battery is taken out when cold: 20 k alone.
    expect(cold?.value).toBeCloseTo(20e3, -2);
    expect(finding?.action).toContain("should read 20 kohm");
    expect(finding?.why).toMatch(/comes mostly from (BT|R1|R2)/);
  });

  it("holds the full line for a supply far too high, and takes other points for less", () => {
    expect(run(at("290 V"))[0]).toMatchObject({ severity: "adjust", holds: "full-line" });
    const other = run(at("100 V", { at: "raw", to: "B+" }), at("60 V", { at: "raw", to: "B+" }));
    const far = other.find(({ severity }) => severity === "adjust");
    expect(far?.holds).toBeUndefined();
  });

  it("takes an ohmmeter reading of a few ohms at B+ for a short", () => {
    expect(run(at("12 ohm", { quantity: "ohms" }))[0]).toMatchObject({ severity: "danger", holds: "full-line" });
    expect(run(at("19.5k", { quantity: "ohms" }))[0]).toMatchObject({ severity: "good" });
  });

  it("forgets a reading that was taken again after the work", () => {
    expect(run(at("120 V"), at("198 V", { life: "restored" })).map(({ severity }) => severity)).toEqual(["good"]);
  });

  it("counts the meter: 1 kohm/V on its 250 V range is 250 k on a point of 6.67 k", () => {
    const model = modelOf({
      parts,
      meters: { old: { input: "1 kohm/V", accuracy: "3 %" } },
      readings: [at("195 V", { meter: "old", range: "250 V" })],
    });
    expect(readingAgainstComputed.run(model)[0]).toMatchObject({ severity: "good" });
  });

  it("names what the failure notes know to go this way", () => {
    const note = {
      id: "leak",
      title: "Leaky decoupling capacitor",
      symptom: { text: "Low.", quantity: "dc-volts", direction: "low" },
      frequency: "common",
    } as unknown as FailureNote;
    const template = {
      id: "t",
      title: "T",
      family: "supply",
      terminals: [{ id: "b-plus", meaning: "B+." }],
      parts: [],
      expected: [],
      requirements: [],
      cautions: [],
      sources: [],
      failureNotes: ["leak"],
    } as unknown as StageTemplate;
    const dataset = { ...smallDataset(), stages: new Map([["t", template]]), failureNotes: new Map([["leak", note]]) };
    const model = modelOf(
      {
        parts,
        stages: [{ id: "s", template: "t", bind: { "b-plus": "B+" } }],
        readings: [at("120 V"), at("290 V", { condition: "standby" })],
      },
      dataset,
    );
    const [low, high] = readingAgainstComputed.run(model);
    expect(low).toMatchObject({ stage: "s" });
    expect(low?.why).toContain("leaky decoupling capacitor");
    expect(high?.why).not.toContain("leaky");
  });

  it("does not apply without readings", () => expect(run()).toEqual([]));
});
