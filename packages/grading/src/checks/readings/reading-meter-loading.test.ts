import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../../testing/model.ts";
import { readingMeterLoading } from "./reading-meter-loading.ts";

const parts: TestJob["parts"] = [
  { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" },
  { name: "R1", kind: "resistor", between: ["B+", "a"], marked: "1 Mohm 5% 1 W" },
  { name: "R2", kind: "resistor", between: ["a", "chassis"], marked: "1 Mohm 5% 1 W" },
];
const run = (meter: object) =>
  readingMeterLoading.run(
    modelOf({ parts, meters: { m: meter }, readings: [{ at: "a", quantity: "dc-volts", value: "120 V", meter: "m", range: "250 V" }] }),
  );

describe("reading-meter-loading", () => {
  it("finds 500 k (the two 1 Mohm in parallel) pulled down by 5 Mohm: 9 %", () => {
    const [finding] = run({ input: "20 kohm/V" });
    expect(finding).toMatchObject({ severity: "watch", point: "a" });
    // 150 V * 5 / 5.5 = 136.4 V; 120 V read means 132 V.
    expect(finding?.figures[0]?.value).toBeCloseTo(136.4, 1);
    expect(finding?.figures[1]?.value).toBeCloseTo(150, 1);
    expect(finding?.figures[2]?.value).toBeCloseTo(132, 1);
  });
  it("passes 10 Mohm, which takes 4.8 %", () => expect(run({ input: "10 Mohm" })).toEqual([]));
  it("does not apply to resistances", () =>
    expect(readingMeterLoading.run(modelOf({ parts, readings: [{ at: "a", quantity: "ohms", value: "1 Mohm" }] }))).toEqual([]));
});
