import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { datasetWith, templateOf } from "../testing/stageTemplate.ts";

/** A feed resistor into a joined choke and a filter capacitor, an optional bleeder, an optional meter shunt in series. */
const FILTER = templateOf({
  id: "filter",
  title: "Filter",
  terminals: [
    { id: "supply", meaning: "raw" },
    { id: "out", meaning: "filtered" },
    { id: "return", meaning: "negative", default: "chassis" },
  ],
  points: { mid: "between resistor and choke" },
  parts: [
    { role: "feed", title: "feed", kind: "resistor", between: ["supply", "mid"], typical: "1 kohm 2 W" },
    { role: "choke", title: "choke", kind: "inductor", between: ["mid", "out"], typical: "8 H 200 ohm", whenAbsent: "joined" },
    { role: "filter", title: "filter", kind: "capacitor", between: ["out", "return"], typical: "20 uF 450 V" },
    { role: "bleeder", title: "bleeder", kind: "resistor", between: ["out", "return"], typical: "100 kohm 2 W", optional: true },
    {
      role: "heaters",
      title: "heater winding",
      kind: "transformer",
      windings: {
        primary: { between: ["supply", "return"], typical: "117 V", ohms: 5 },
        lamp: { between: ["mid", "return"], typical: "6.3 V", ohms: 1, optional: true },
      },
    },
  ],
});
const dataset = datasetWith(FILTER);

type Stage = NonNullable<Parameters<typeof modelOf>[0]["stages"]>[number];
const build = (stage: Partial<Stage> = {}, reference?: string) =>
  modelOf({ ...(reference === undefined ? {} : { reference }), stages: [{ id: "f", template: "filter", ...stage }] }, dataset);

describe("points of a stage", () => {
  it("are bound, else the terminal's default, else named after the stage", () => {
    const { points } = build({ bind: { out: "B+", mid: "B+ in" } }).stages[0]!;
    expect(points).toEqual({ supply: "f:supply", out: "B+", return: "chassis", mid: "B+ in" });
  });

  it("fall back to the job's reference where the template says chassis", () => {
    expect(build({}, "B-").stages[0]!.points.return).toBe("B-");
  });

  it("carry the parts between them, first lead first", () => {
    const model = build({ bind: { supply: "raw", out: "B+" } });
    expect(model.parts.get("f.feed")!.lives.designed.pins).toEqual({ a: "raw", b: "f:mid" });
    expect([...model.points.get("B+")!].sort()).toEqual(["f.choke", "f.filter"]);
  });

  it("may be exchanged for a part that the chassis has elsewhere", () => {
    const model = build({ parts: { filter: { between: ["elsewhere", "chassis"] } } });
    expect(model.parts.get("f.filter")!.lives.restored.pins).toEqual({ a: "elsewhere", b: "chassis" });
  });
});

describe("parts of a stage", () => {
  it("go by stage and role until they get a name", () => {
    const { parts } = build({ parts: { feed: { name: "R1" } } }).stages[0]!;
    expect(parts).toEqual({ feed: "R1", choke: "f.choke", filter: "f.filter", heaters: "f.heaters" });
  });

  it("are typical where the job says nothing, and say so", () => {
    const state = build().parts.get("f.feed")!.lives.designed;
    expect(state.main).toMatchObject({ value: 1000, from: "typical" });
    const marked = build({ parts: { feed: { marked: "2.2 kohm" } } }).parts.get("f.feed")!.lives.designed;
    expect(marked.main).toMatchObject({ value: 2200, from: "marking" });
  });

  it.each([
    ["unnamed", undefined, false],
    ["named with nothing said", {}, true],
    ["marked", { marked: "47 kohm" }, true],
    ["named as absent", { absent: true }, false],
  ] as const)("that are optional and %s", (_case, state, there) => {
    const model = build(state === undefined ? {} : { parts: { bleeder: state } });
    expect(model.parts.has("f.bleeder")).toBe(there);
    expect(Object.hasOwn(model.stages[0]!.parts, "bleeder")).toBe(there);
  });

  it("that are absent leave a gap, or a wire where they stand in series", () => {
    const model = build({ parts: { filter: { absent: true }, choke: { absent: true } } });
    expect(model.parts.has("f.filter") || model.parts.has("f.choke")).toBe(false);
    expect(model.joins).toEqual([["f:mid", "f:out"]]);
  });

  it("have an optional winding only where the job names it, and drop one that is absent", () => {
    const ids = (stage: Partial<Stage> = {}) =>
      build(stage)
        .parts.get("f.heaters")!
        .lives.designed.windings!.map(({ id }) => id);
    expect(ids()).toEqual(["primary"]);
    expect(ids({ parts: { heaters: { windings: { lamp: {} } } } })).toEqual(["primary", "lamp"]);
    expect(() => ids({ parts: { heaters: { windings: { lamp: { marked: "6.3 V" }, primary: { absent: true } } } } })).toThrow(
      "transformer-primary-missing",
    );
  });
});

describe("free parts", () => {
  it("take title and duty from their role", () => {
    const model = modelOf({ parts: [{ name: "R2", kind: "resistor", role: "standbyBypass", marked: "100 k", between: ["a", "b"] }] });
    expect(model.parts.get("R2")).toMatchObject({ title: "standby bypass", duty: "standby-bypass", role: "standbyBypass" });
  });

  it("may belong to a stage without a place in its template", () => {
    const model = modelOf({ parts: [{ name: "R2", kind: "resistor", stage: "audio", marked: "100 k", between: ["a", "b"] }] });
    expect(model.parts.get("R2")!.stage).toBe("audio");
    expect(model.parts.get("R2")!.template).toBeUndefined();
  });
});
