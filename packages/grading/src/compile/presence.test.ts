import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../testing/model.ts";
import { referenceDataset } from "../testing/referenceDataset.ts";
import { bulbOf } from "./presence.ts";

it.each([
  ["V3A", "V3"],
  ["V3B", "V3"],
  ["V12a", "V12"],
  ["V3", "V3"],
  ["first-audio.tube", "first-audio.tube"],
  ["R1", "R1"],
])("%s is in bulb %s", (name, bulb) => {
  expect(bulbOf(name)).toBe(bulb);
});

const tube = (name: string, type = "12AX7"): JobPart => ({
  name,
  kind: "tube",
  type,
  pins: { plate: `${name} plate`, grid: "chassis", cathode: "chassis" },
});
const feed = (name: string): JobPart => ({ name: `R ${name}`, kind: "resistor", marked: "100 kohm", between: ["B+", `${name} plate`] });

const parts: JobPart[] = [
  { name: "V1", kind: "rectifier", type: "6X4", pins: { "plate-1": "ac", cathode: "B+" } },
  { name: "D1", kind: "rectifier", type: "1N4007", between: ["ac", "B+"] },
  { name: "VR", kind: "regulator-tube", type: "0D3", between: ["B+", "chassis"] },
  ...["V2", "V3A", "V3B"].flatMap((name) => [tube(name), feed(name)]),
  { name: "LOAD", kind: "load", marked: "10 mA", between: ["B+", "chassis"] },
  { name: "DRAIN", kind: "load", marked: "5 mA", between: ["B+", "chassis"], presentIn: ["tubes-out", "half"] },
];

/** Which of the parts above are in the network. */
function present(condition: string, conditions: NonNullable<TestJob["conditions"]> = {}) {
  const model = modelOf({ parts, conditions }, referenceDataset());
  const { origins } = model.compile({ life: "found", condition, line: "actual" });
  const ids = new Set([...origins.values()].map(({ part }) => part));
  return ["V1", "D1", "VR", "V2", "V3A", "V3B", "LOAD", "DRAIN"].filter((id) => ids.has(id));
}

describe("what takes part in a condition", () => {
  it.each([
    ["operating", {}, ["V1", "D1", "VR", "V2", "V3A", "V3B", "LOAD"]],
    ["standby", {}, ["V1", "D1", "VR", "V2", "V3A", "V3B", "LOAD"]],
    // Rectifier tubes stay, solid ones always do; nothing draws.
    ["tubes-out", {}, ["V1", "D1", "DRAIN"]],
    ["none", { none: { tubes: "none" } }, ["D1"]],
    // A bulb brings both its sections; the rectifier and the regulator are tubes like others.
    ["half", { half: { tubes: ["V3", "V1"] } }, ["V1", "D1", "V3A", "V3B", "DRAIN"]],
    ["section", { section: { tubes: ["V3B"] } }, ["D1", "V3B"]],
    ["like-out", { "like-out": { like: "tubes-out" } }, ["V1", "D1", "DRAIN"]],
  ] as const)("%s", (condition, conditions, expected) => {
    expect(present(condition, conditions as unknown as NonNullable<TestJob["conditions"]>)).toEqual(expected);
  });

  it("without power nothing draws", () => {
    expect(present("cold")).not.toContain("LOAD");
  });
});

describe("switches", () => {
  const closed = (part: Partial<JobPart>, condition: string, conditions: NonNullable<TestJob["conditions"]> = {}) => {
    const all: JobPart[] = [
      { name: "BT", kind: "battery", marked: "9 V", between: ["a", "chassis"] },
      { name: "S1", kind: "switch", between: ["a", "b"], ...part },
      { name: "R1", kind: "resistor", marked: "1 kohm", between: ["b", "chassis"] },
    ];
    return modelOf({ parts: all, conditions })
      .compile({ life: "found", condition, line: "actual" })
      .network.elements.some(({ id }) => id === "S1");
  };

  it("are closed unless somebody says so", () => {
    expect(closed({}, "operating")).toBe(true);
    expect(closed({}, "cold")).toBe(true);
  });

  it("of the line are open in a set without power", () => {
    expect(closed({ role: "lineSwitch" }, "cold")).toBe(false);
    expect(closed({ role: "lineSwitch" }, "tubes-out")).toBe(true);
  });

  it("stand as their own positions say, by condition or by what it is like", () => {
    const positions = { standby: "open" } as const;
    expect(closed({ positions }, "standby")).toBe(false);
    expect(closed({ positions }, "operating")).toBe(true);
    expect(closed({ positions }, "pause", { pause: { like: "standby" } })).toBe(false);
  });

  it("obey the condition before their own positions", () => {
    expect(closed({ positions: { standby: "open" } }, "standby", { standby: { switches: { S1: "closed" } } })).toBe(true);
  });
});
