import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../../testing/model.ts";
import { datasetWith, templateOf } from "../../testing/stageTemplate.ts";
import { unreadPoints } from "./unread-points.ts";

const template = templateOf({
  id: "divider",
  title: "Divider",
  points: { tap: "Tap." },
  parts: [
    { role: "upper", title: "Upper", kind: "resistor", between: ["supply", "tap"], typical: "10 kohm 5% 5 W" },
    { role: "lower", title: "Lower", kind: "resistor", between: ["tap", "return"], typical: "20 kohm 5% 5 W" },
  ],
  expected: [
    { title: "Tap", at: "tap", to: "return", quantity: "dc-volts", condition: "operating", source: "common-practice" },
    { title: "Current", part: "lower", quantity: "dc-amps", condition: "operating", source: "common-practice" },
    { title: "Cold", at: "tap", to: "return", quantity: "ohms", condition: "cold", source: "common-practice" },
  ],
});
const run = (...readings: NonNullable<TestJob["readings"]>) =>
  unreadPoints.run(
    modelOf(
      {
        stages: [{ id: "d1", template: "divider", bind: { supply: "B+", tap: "screen" } }],
        parts: [{ name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" }],
        readings,
      },
      datasetWith(template),
    ),
  );

describe("unread-points", () => {
  it("lists what to read in bench order, with the value to expect: 20 k cold, then 200 V (voltage divider), and no direct current", () => {
    const [cold, operating] = run();
    expect(cold).toMatchObject({ severity: "unmeasured", condition: "cold" });
    expect(cold?.holds).toBeUndefined();
    expect(cold?.figures[0]?.value).toBeCloseTo(20e3, -1);
    expect(operating).toMatchObject({ severity: "unmeasured", condition: "operating", holds: "service" });
    expect(operating?.figures.map(({ value }) => value)).toEqual([expect.closeTo(200, 3)]);
    const [low, high] = [operating?.figures[0]?.low ?? 0, operating?.figures[0]?.high ?? 0];
    expect(low).toBeLessThan(195);
    expect(high).toBeGreaterThan(205);
  });
  it("leaves out what has been read since the work, but not what was read before", () => {
    const reading = { at: "screen", quantity: "dc-volts" as const, value: "199 V" };
    expect(run({ ...reading, life: "restored" }).map(({ condition }) => condition)).toEqual(["cold"]);
    expect(run(reading).map(({ condition }) => condition)).toEqual(["cold", "operating"]);
  });
  it("does not apply without stages", () =>
    expect(unreadPoints.run(modelOf({ parts: [{ name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "9 V" }] }))).toEqual([]));
});
