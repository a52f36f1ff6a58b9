import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../testing/model.ts";

type Reading = NonNullable<TestJob["readings"]>[number];

const meters: NonNullable<TestJob["meters"]> = {
  bench: { title: "bench multimeter", input: "10 Mohm", accuracy: "0.8 %" },
  needle: { input: "20 kohm/V", accuracy: "3 %" },
  old: { input: "1000 ohms per volt" },
  vtvm: { input: "11 Mohm", testVolts: "1.5 V" },
};
/** A reading at a divider that is there only to be read. */
function readingOf(reading: Partial<Reading>) {
  const job: TestJob = {
    meters,
    parts: [
      { name: "R1", kind: "resistor", marked: "1 Mohm", between: ["A", "B"] },
      { name: "R2", kind: "resistor", marked: "1 Mohm", between: ["B", "chassis"] },
    ],
    readings: [{ at: "B", quantity: "dc-volts", value: "100 V", ...reading }],
  };
  return modelOf(job).readings[0]!;
}

describe("meters", () => {
  it.each([
    ["bench", undefined, 10e6, 0.008, 0.3],
    // 20 kohm for each volt of the range.
    ["needle", "250 V", 5e6, 0.03, 0.3],
    ["needle", "50 V", 1e6, 0.03, 0.3],
    ["old", "500 V", 500e3, 0.01, 0.3],
    ["vtvm", undefined, 11e6, 0.01, 1.5],
    [undefined, undefined, 10e6, 0.01, 0.3],
  ])("%s on its %s range loads with %d ohm", (meter, range, loadOhms, accuracy, testVolts) => {
    const reading = readingOf({ ...(meter === undefined ? {} : { meter }), ...(range === undefined ? {} : { range }) });
    expect(reading.loadOhms).toBeCloseTo(loadOhms, 6);
    expect(reading.meter.accuracy).toBeCloseTo(accuracy, 12);
    expect(reading.meter.testVolts).toBe(testVolts);
  });

  it("in ohms per volt need the range", () => {
    expect(() => readingOf({ meter: "needle" })).toThrow("meter-range-missing");
  });

  it("in ohms per volt need no range to show ohms or amperes", () => {
    expect(() => readingOf({ meter: "needle", quantity: "ohms", value: "1 Mohm" })).not.toThrow();
    expect(() => readingOf({ meter: "needle", quantity: "dc-amps", at: "R1", value: "1 mA" })).not.toThrow();
  });

  it.each(["0 ohm", "-10 Mohm", "0 ohm/V"])("with an input of %s are refused", (input) => {
    expect(() => modelOf({ meters: { bad: { input } } })).toThrow(/value-(out-of-range|unreadable)/);
  });
});

describe("readings", () => {
  it("count from the reference, operating, as found, unless they say otherwise", () => {
    expect(readingOf({})).toMatchObject({ to: "chassis", condition: "operating", life: "found", value: 100, asWritten: "100 V", index: 0 });
    expect(readingOf({ to: "A", condition: "standby", life: "restored" })).toMatchObject({
      to: "A",
      condition: "standby",
      life: "restored",
    });
    expect(readingOf({ quantity: "ohms", value: "2M" })).toMatchObject({ condition: "cold", value: 2e6 });
  });

  it.each(["open", "OL", "O.L.", "infinite", "inf", "∞"])("of %s ohms are an open circuit", (value) => {
    expect(readingOf({ quantity: "ohms", value }).value).toBe(Number.POSITIVE_INFINITY);
  });

  it("of volts are never open", () => {
    expect(() => readingOf({ value: "OL" })).toThrow("value-unreadable");
  });

  it.each([
    ["270 to 300 V", 270, 300],
    ["-12 to -15 V", -15, -12],
  ])("stand beside what the papers say: %s", (published, low, high) => {
    expect(readingOf({ published }).published).toEqual({ low, high, asWritten: published });
  });

  it("carry the line voltage of their own", () => {
    expect(readingOf({ lineVolts: "112 V" }).lineVolts).toBe(112);
    expect(readingOf({}).lineVolts).toBeUndefined();
  });
});
