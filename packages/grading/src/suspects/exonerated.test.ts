import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { exonerated } from "./exonerated.ts";

const clearOf = (part: Partial<JobPart>, life: "found" | "restored" = "found") => {
  const whole: JobPart = { name: "X1", kind: "resistor", marked: "10 kohm", between: ["a", "chassis"], ...part };
  const model = modelOf({ parts: [{ name: "R9", kind: "resistor", marked: "1 kohm", between: ["a", "chassis"] }, whole] });
  return [...exonerated(model.parts.get("X1")!, life)].sort();
};

describe("exonerated", () => {
  it("a value out of circuit excludes what it would show, and no lead", () => {
    const clear = clearOf({ measured: { value: "10.1 kohm", circuit: "out" } });
    expect(clear).toEqual(["drift-high", "drift-low", "exchanged", "open", "short", "wrong-value"]);
  });

  it("a value in circuit, or none, excludes nothing", () => {
    expect(clearOf({ measured: { value: "10.1 kohm", circuit: "in" } })).toEqual([]);
    expect(clearOf({})).toEqual([]);
  });

  it("a capacitor's capacitance says nothing of its leakage, and the leakage nothing of its capacitance", () => {
    const capacitor: Partial<JobPart> = { kind: "capacitor", marked: "20 uF 450 V electrolytic" };
    const byValue = clearOf({ ...capacitor, measured: { value: "19 uF", circuit: "out" } });
    expect(byValue).toEqual(["exchanged", "lost-capacity", "open", "wrong-value"]);
    expect(clearOf({ ...capacitor, measured: { leakage: "1 Mohm", circuit: "out" } })).toEqual(["leaky", "short"]);
    expect(clearOf({ ...capacitor, measured: { esr: "2 ohm", circuit: "out" } })).toEqual(["high-esr", "open"]);
  });

  it("found good: all that a part can have, but not how it is wired or what is marked on it", () => {
    const clear = clearOf({ measured: { condition: "good", circuit: "out" } });
    for (const kind of ["open", "short", "drift-high", "leaky", "high-esr", "dead", "gassy"]) expect(clear).toContain(kind);
    for (const kind of ["moved-lead", "bridge", "exchanged", "reversed", "wrong-value"]) expect(clear).not.toContain(kind);
  });

  it("a part that was replaced is judged by what was measured of the new one", () => {
    const measured = { value: "14 kohm", circuit: "out" } as const;
    const replaced: Partial<JobPart> = { measured, fitted: "10 kohm" };
    expect(clearOf(replaced, "found")).toContain("drift-high");
    expect(clearOf(replaced, "restored")).toEqual([]);
    const both: Partial<JobPart> = { measured, fitted: { marked: "10 kohm", measured: { value: "9.9 kohm", circuit: "out" } } };
    expect(clearOf(both, "restored")).toContain("drift-high");
  });
});
