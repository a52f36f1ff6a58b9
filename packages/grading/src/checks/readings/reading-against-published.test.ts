import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../../testing/model.ts";
import { readingAgainstPublished } from "./reading-against-published.ts";

const parts: TestJob["parts"] = [
  { name: "BT", kind: "battery", between: ["raw", "chassis"], marked: "300 V" },
  { name: "R1", kind: "resistor", between: ["raw", "B+"], marked: "10 kohm 5% 5 W" },
  { name: "R2", kind: "resistor", between: ["B+", "chassis"], marked: "20 kohm 5% 5 W" },
];
const run = (value: string, published?: string) =>
  readingAgainstPublished.run(
    modelOf({ parts, readings: [{ at: "B+", quantity: "dc-volts", value, ...(published === undefined ? {} : { published }) }] }),
  );

describe("reading-against-published", () => {
  it("passes a reading within the published range", () =>
    expect(run("205 V", "190 to 210 V").map(({ severity }) => severity)).toEqual(["good"]));
  it("allows a fifth where the papers give one figure: 205 V beside 180 V (144 to 216 V)", () =>
    expect(run("205 V", "180 V")[0]).toMatchObject({ severity: "good" }));
  it("finds a reading that neither papers nor parts explain", () => {
    const [finding] = run("120 V", "190 to 210 V");
    expect(finding).toMatchObject({ severity: "adjust", point: "B+" });
    expect(finding?.figures[0]).toMatchObject({ low: 190, high: 210, value: 120 });
  });
  it("only watches one that the recorded parts explain", () =>
    expect(run("205 V", "280 to 300 V")[0]).toMatchObject({ severity: "watch" }));
  it("does not apply without papers", () => expect(run("205 V")).toEqual([]));
});
