import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { shortedSource } from "./shorted-source.ts";

type Parts = NonNullable<Parameters<typeof modelOf>[0]["parts"]>;
const judge = (...parts: Parts) => shortedSource.run(modelOf({ parts }));

const load: Parts[number] = { name: "R1", kind: "resistor", between: ["a", "line neutral"], marked: "1 kohm 20 W" };
const battery: Parts[number] = { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "90 V" };

describe("wiring across a source", () => {
  it("is a danger where it was found and still stands", () => {
    const wire: Parts[number] = { name: "J1", kind: "wire", between: ["line hot", "a"], foundBetween: ["line hot", "line neutral"] };
    expect(judge(load, wire)).toMatchObject([
      { severity: "danger", life: "restored", part: "J1", title: "J1 shorts the line", holds: "current-limited" },
    ]);
  });

  it("names every part of the way and no other", () => {
    const [finding, ...rest] = judge(
      battery,
      { name: "J0", kind: "wire", between: ["B+", "elsewhere"] },
      { name: "J1", kind: "wire", between: ["B+", "tag"] },
      { name: "J2", kind: "wire", between: ["tag", "spare"], foundBetween: ["tag", "chassis"] },
    );
    expect(rest).toEqual([]);
    expect(finding?.title).toBe("J1, J2 shorts BT");
  });

  it("is nothing any more once it was moved, and nothing where wires lead through a part", () => {
    const moved: Parts[number] = {
      name: "J1",
      kind: "wire",
      between: ["line hot", "a"],
      foundBetween: ["line hot", "line neutral"],
      fitted: { between: ["line hot", "a"] },
    };
    expect(judge(load, moved)).toEqual([]);
    expect(judge(load, { name: "J1", kind: "wire", between: ["line hot", "a"] })).toEqual([]);
  });

  it("is told of a plan that would make it", () => {
    const planned: Parts[number] = {
      name: "J1",
      kind: "wire",
      between: ["line hot", "a"],
      fitted: { between: ["line hot", "line neutral"], planned: true },
    };
    expect(judge(load, planned)).toMatchObject([{ life: "planned", severity: "danger" }]);
  });
});
