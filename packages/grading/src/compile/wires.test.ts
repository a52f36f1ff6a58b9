import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { Wires } from "./wires.ts";

describe("Wires", () => {
  it("gives joined points one name, the first's, through any number of joins", () => {
    const wires = new Wires("chassis");
    wires.join("a", "b");
    wires.join("c", "d");
    wires.join("b", "c");
    expect(["a", "b", "c", "d", "e"].map((point) => wires.find(point))).toEqual(["a", "a", "a", "a", "e"]);
  });

  it("keeps the reference's name wherever it is joined, first or second", () => {
    const wires = new Wires("chassis");
    wires.join("earth", "chassis");
    wires.join("chassis", "tag");
    wires.join("lug", "tag");
    expect(["earth", "chassis", "tag", "lug"].map((point) => wires.find(point))).toEqual(["chassis", "chassis", "chassis", "chassis"]);
  });

  it("stands a loop of wires", () => {
    const wires = new Wires("chassis");
    for (const [a, b] of [
      ["a", "b"],
      ["b", "c"],
      ["c", "a"],
      ["a", "a"],
    ] as const)
      wires.join(a, b);
    expect(wires.find("c")).toBe("a");
  });
});

/** A cord on a set with a transformer; the network's name of each point. */
function names(cord: string, more: JobPart[] = []) {
  const pins = {
    "hot-in": "line hot",
    "hot-out": "h",
    "neutral-in": "line neutral",
    "neutral-out": "n",
    "earth-in": "earth",
    "earth-out": "chassis",
  };
  const parts: JobPart[] = [
    { name: "W1", kind: "cord", marked: cord, pins },
    { name: "R1", kind: "resistor", marked: "100 ohm", between: ["h", "n"] },
    { name: "R2", kind: "resistor", marked: "1 kohm", between: ["n", "chassis"] },
    ...more,
  ];
  const model = modelOf({ parts });
  return (life: "found" | "restored", ...points: string[]) => {
    const compiled = model.compile({ life, condition: "operating", line: "actual" });
    return points.map((point) => compiled.pointOf(point));
  };
}

describe("cords and wires in a network", () => {
  it("a three-wire cord joins hot, neutral and earth", () => {
    const [hot, h, neutral, n, earth, chassis] = names("3-wire")("found", "line hot", "h", "line neutral", "n", "earth", "chassis");
    expect(h).toBe(hot);
    expect(n).toBe(neutral);
    expect(chassis).toBe(earth);
  });

  it("a two-wire cord leaves the chassis off the earth", () => {
    const [hot, h, neutral, n, earth, chassis] = names("2-wire")("found", "line hot", "h", "line neutral", "n", "earth", "chassis");
    expect(h).toBe(hot);
    expect(n).toBe(neutral);
    expect(chassis).toBe("chassis");
    expect(chassis).not.toBe(earth);
  });

  it("the panel joins neutral and earth", () => {
    const [neutral, earth] = names("2-wire")("found", "line neutral", "earth");
    expect(earth).toBe(neutral);
  });

  it("a wire joins its ends only while it is there", () => {
    const at = names("2-wire", [
      { name: "J1", kind: "wire", between: ["n", "tag"], removed: true },
      { name: "R3", kind: "resistor", marked: "1 kohm", between: ["tag", "chassis"] },
    ]);
    expect(at("found", "tag", "n").every((name, _index, [first]) => name === first)).toBe(true);
    const [tag, n] = at("restored", "tag", "n");
    expect(tag).not.toBe(n);
  });

  it("a part with both leads on one point has no effect, and the notes say so", () => {
    const parts: JobPart[] = [
      { name: "BT", kind: "battery", marked: "9 V", between: ["a", "chassis"] },
      { name: "R1", kind: "resistor", marked: "1 kohm", between: ["a", "chassis"] },
      { name: "J1", kind: "wire", between: ["a", "b"] },
      { name: "R2", kind: "resistor", marked: "1 kohm", between: ["a", "b"] },
    ];
    const { network, notes } = modelOf({ parts }).compile({ life: "found", condition: "operating", line: "actual" });
    expect(network.elements.map(({ id }) => id)).toEqual(["BT", "R1"]);
    expect(notes).toEqual(["R2: both leads are on a; it has no effect"]);
  });

  it("a series part that is measured open leaves a gap, one that was taken out or never there is a wire", async () => {
    const { datasetWith, templateOf } = await import("../testing/stageTemplate.ts");
    const template = templateOf({
      id: "feed",
      points: { mid: "middle" },
      parts: [
        { role: "fuse", title: "fuse", kind: "fuse", between: ["supply", "mid"], typical: "1 A 250 V", whenAbsent: "joined" },
        { role: "load", title: "load", kind: "resistor", between: ["mid", "return"], typical: "1 kohm" },
      ],
    });
    const joined = (fuse: object, life: "designed" | "found" | "restored") => {
      const model = modelOf(
        {
          stages: [{ id: "s", template: "feed", bind: { supply: "S" }, parts: { fuse } }],
          parts: [{ name: "BT", kind: "battery", marked: "9 V", between: ["S", "chassis"] }],
        },
        datasetWith(template),
      );
      const compiled = model.compile({ life, condition: "operating", line: "actual" });
      return compiled.pointOf("S") === compiled.pointOf("s:mid");
    };
    expect(joined({ measured: { condition: "open" } }, "found")).toBe(false);
    expect(joined({ removed: true }, "found")).toBe(false);
    expect(joined({ removed: true }, "restored")).toBe(true);
    expect(joined({ absent: true }, "designed")).toBe(true);
    expect(joined({ fitted: "1 A 250 V" }, "found")).toBe(true);
    expect(joined({ fitted: "1 A 250 V" }, "restored")).toBe(false);
  });
});
