import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { brokenParts } from "./broken-parts.ts";

const battery: JobPart = { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "90 V" };
const run = (part: Partial<JobPart>) =>
  brokenParts.run(modelOf({ parts: [battery, { name: "R1", kind: "resistor", between: ["B+", "chassis"], marked: "10k 2W", ...part }] }));

describe("broken-parts", () => {
  it.each([
    ["open", "replace", "full-line"],
    ["shorted", "danger", "current-limited"],
  ] as const)("speaks of a part found %s that still stands there", (condition, severity, holds) => {
    expect(run({ measured: { condition } })).toMatchObject([{ part: "R1", severity, holds, order: [{ for: "R1" }] }]);
  });

  it("is content once another was fitted, and with a good one", () => {
    expect(run({ measured: { condition: "open" }, fitted: "10k 2W" })).toEqual([]);
    expect(run({ measured: { condition: "open" }, removed: true })).toEqual([]);
    expect(run({ measured: { condition: "good", value: "10.1k" } })).toEqual([]);
  });

  it("judges the fitted part by its own measurement", () => {
    expect(run({ measured: { condition: "open" }, fitted: { marked: "10k 2W", measured: { condition: "open" } } })).toHaveLength(1);
  });
});
