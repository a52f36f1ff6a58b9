import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../../testing/model.ts";
import { readingsConsistency } from "./readings-consistency.ts";

const parts: TestJob["parts"] = [
  { name: "BT", kind: "battery", between: ["raw", "chassis"], marked: "300 V" },
  { name: "R1", kind: "resistor", between: ["raw", "B+"], marked: "2 kohm 2 W" },
  { name: "R2", kind: "resistor", between: ["B+", "chassis"], marked: "20 kohm 10 W" },
];
const at = (point: string, value: string, more = {}) => ({ at: point, quantity: "dc-volts" as const, value, ...more });
const run = (...readings: NonNullable<TestJob["readings"]>) => readingsConsistency.run(modelOf({ parts, readings }));

describe("readings-consistency", () => {
  it("finds (300 V - 200 V)^2 / 2 kohm = 5 W in a 2 W part", () => {
    const [finding] = run(at("raw", "300 V"), at("B+", "200 V"));
    expect(finding).toMatchObject({ severity: "adjust", part: "R1", holds: "full-line" });
    expect(finding?.figures[0]).toMatchObject({ value: 5, limit: 2 });
    expect(finding?.figures[1]?.value).toBeCloseTo(0.05, 9);
  });
  it("passes 60 V across it: 1.8 W", () => expect(run(at("raw", "60 V", { to: "B+" })).map(({ severity }) => severity)).toEqual(["good"]));
  it("does not mix conditions or lives", () => {
    expect(run(at("raw", "300 V"), at("B+", "20 V", { condition: "standby" })).filter(({ part }) => part === "R1")).toEqual([]);
    expect(run(at("raw", "300 V"), at("B+", "20 V", { life: "restored" })).filter(({ part }) => part === "R1")).toEqual([]);
  });
  it("does not apply to a single reading at neither of its grounded ends", () => expect(run(at("raw", "300 V"))).toEqual([]));
});
