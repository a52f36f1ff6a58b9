import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { supplyParts } from "../testing/supply.ts";
import { changeLines } from "./changeLines.ts";

/** 200 V through R1 and R2 to the chassis, R3 beside R2. */
const divider = (changes: Record<string, Partial<JobPart>>): JobPart[] =>
  (
    [
      { name: "BT", kind: "battery", marked: "200 V", between: ["top", "chassis"] },
      { name: "R1", kind: "resistor", marked: "10 kohm 10 %", between: ["top", "mid"] },
      { name: "R2", kind: "resistor", marked: "10 kohm 10 %", between: ["mid", "chassis"] },
    ] as JobPart[]
  ).map((part) => ({ ...part, ...changes[part.name] }));
const linesOf = (changes: Record<string, Partial<JobPart>>, more: JobPart[] = []) =>
  changeLines(modelOf({ parts: [...divider(changes), ...more] }));
const effect = (lines: ReturnType<typeof linesOf>, part: string, label: string) =>
  lines.find((line) => line.part === part)?.effects.find((entry) => entry.label === label);

describe("before and after", () => {
  it("takes one change at a time: the others stand as they are", () => {
    const lines = linesOf({
      R1: { measured: { value: "30 kohm" }, fitted: { marked: "10 kohm", why: "drifted" } },
      R2: { fitted: "30 kohm" },
    });
    // Both changed: 200 x 30 / 40 = 150. Without the new R1: 200 x 30 / 60 = 100. Without the new R2: 200 x 10 / 20 = 100.
    expect(effect(lines, "R1", "mid, DC")?.before).toBeCloseTo(100, 6);
    expect(effect(lines, "R1", "mid, DC")?.after).toBeCloseTo(150, 6);
    expect(effect(lines, "R2", "mid, DC")?.before).toBeCloseTo(100, 6);
    expect(effect(lines, "R2", "mid, DC")?.after).toBeCloseTo(150, 6);
    expect(lines.find(({ part }) => part === "R1")).toMatchObject({
      what: "replaced",
      why: "drifted",
      planned: false,
      from: "10 kohm 10 %, measured 30 kohm",
      to: "10 kohm",
    });
  });

  it("names what was added, taken out and moved", () => {
    const added: JobPart = { name: "R3", kind: "resistor", between: ["mid", "chassis"], fitted: "10 kohm" };
    const lines = linesOf({}, [
      added,
      { name: "R4", kind: "resistor", marked: "10 kohm", between: ["top", "mid"], removed: true },
      { name: "R5", kind: "resistor", marked: "1 kohm", between: ["top", "chassis"], fitted: { between: ["mid", "chassis"] } },
    ]);
    expect(lines.map(({ part, what, from, to }) => [part, what, from, to])).toEqual([
      ["R3", "added", "nothing", "10 kohm"],
      ["R4", "removed", "10 kohm", "nothing"],
      ["R5", "moved", "1 kohm", "between mid and chassis"],
    ]);
  });

  it("of a part that was only planned compares the plan", () => {
    const lines = linesOf({ R2: { fitted: { marked: "30 kohm", planned: true } } });
    expect(lines[0]).toMatchObject({ planned: true, what: "replaced" });
    expect(effect(lines, "R2", "mid, DC")?.before).toBeCloseTo(100, 6);
    expect(effect(lines, "R2", "mid, DC")?.after).toBeCloseTo(150, 6);
  });

  it("is silent where the new part is electrically the old one, and about parts that nobody touched", () => {
    const lines = linesOf({ R2: { fitted: "10 kohm 2 W" } });
    expect(lines.map(({ part, effects }) => [part, effects])).toEqual([["R2", []]]);
  });
});

describe("before and after in a rectified supply", () => {
  const change = { C1: { measured: { value: "5 uF" }, fitted: "20 uF 450 V" } } as const;
  const [line] = changeLines(modelOf({ parts: supplyParts(change) }));

  it("gives ripple and the rectifier's peak, as two whole simulations give them", () => {
    const solved = (parts: JobPart[]) => {
      const result = modelOf({ parts }).solve({ life: "restored", condition: "operating", line: "actual" });
      if (!result.ok) throw new Error(result.message);
      return result.steady;
    };
    const [old, now] = [solved(supplyParts({ C1: { marked: "5 uF 450 V" } })), solved(supplyParts())];
    const ripple = line?.effects.find(({ label }) => label === "B+1, ripple peak to peak");
    const read = (steady: typeof now) =>
      steady.read({ quantity: "ripple-volts", from: "B+1", to: [...steady.points.keys()].includes("chassis") ? "chassis" : "earth" });
    expect(Math.abs((ripple?.before ?? 0) / read(old) - 1)).toBeLessThan(0.02);
    expect(Math.abs((ripple?.after ?? 0) / read(now) - 1)).toBeLessThan(0.005);
    const peak = line?.effects.find(({ label }) => label === "V1, peak current per plate");
    expect(Math.abs((peak?.before ?? 0) / (old.elements.get("V1/plate-1")?.maxAmps ?? 0) - 1)).toBeLessThan(0.02);
    // The tube's published limit stands beside it.
    expect(peak).toMatchObject({ limit: 0.4, unit: "A" });
  });

  it("says nothing of the alternating points", () => {
    expect(line?.effects.filter(({ label }) => /plate 1|primary/.test(label))).toEqual([]);
  });
});

it("a transformer with other windings has effects", () => {
  const windings = supplyParts().find(({ name }) => name === "T1")!.windings!;
  const fitted = { windings: { hv: { marked: "350-0-350 V 100 mA", measured: "180 ohm" } } };
  const [line] = changeLines(modelOf({ parts: supplyParts({ T1: { windings, fitted } }) }));
  expect(line).toMatchObject({ part: "T1", what: "replaced", to: "hv 350-0-350 V 100 mA" });
  expect(line?.effects.length).toBeGreaterThan(0);
});
