import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { livesTouching, reach } from "./layout.ts";
import { lineDuty, lineSide } from "./lineSide.ts";

const planned = { C1: { fitted: { marked: "40 uF 500 V", planned: true } } };

describe("reach", () => {
  const model = modelOf({ parts: supplyParts() });

  it("goes through the cord and the parts that may be passed, and says which", () => {
    const points = reach(model, "restored", "line hot", ({ part }) => part.kind === "fuse");
    expect([...points.keys()]).toEqual(["line hot", "fuse in", "switch in"]);
    expect(points.get("switch in")?.map(({ part }) => part.id)).toEqual(["F1"]);
  });

  it("stops where it is told to", () => {
    expect([...reach(model, "restored", "line hot", () => true, new Set(["fuse in"])).keys()]).toEqual(["line hot"]);
  });
});

describe("livesTouching", () => {
  it("adds the plan only when it touches such a part", () => {
    const model = modelOf({ parts: supplyParts(planned) });
    expect(livesTouching(model, "capacitor")).toEqual(["restored", "planned"]);
    expect(livesTouching(model, "fuse")).toEqual(["restored"]);
  });
});

describe("lineDuty", () => {
  it.each([
    [["primary 1", "primary 2"], "across-line"],
    [["chassis", "primary 2"], "line-to-chassis"],
    [["B+1", "chassis"], undefined],
  ] as [[string, string], string | undefined][])("%j is %s", (between, duty) => {
    const model = modelOf({ parts: supplyParts({}, [{ name: "CX", kind: "capacitor", marked: "10 nF", between }]) });
    const part = model.parts.get("CX");
    expect(part && lineDuty({ part, state: part.lives.restored }, lineSide(model, "restored"))).toBe(duty);
  });
});
