import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { resistorInCircuit } from "./resistor-in-circuit.ts";

/** R1, 100 k, with R2, 100 k, across it: 50 k in circuit (parallel resistances). */
const run = (value: string, marked = "100k 1W 10%") =>
  resistorInCircuit.run(
    modelOf({
      parts: [
        { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" },
        { name: "RS", kind: "resistor", between: ["B+", "a"], marked: "1 Mohm 1 W" },
        { name: "R1", kind: "resistor", between: ["a", "chassis"], marked, measured: { value, circuit: "in" } },
        { name: "R2", kind: "resistor", between: ["a", "chassis"], marked: "100k 1W 10%" },
        { name: "C1", kind: "capacitor", between: ["a", "chassis"], marked: "0.1 uF 400 V paper" },
      ],
    }),
  );

describe("resistor-in-circuit", () => {
  it("passes 50 k: the marked 100 k in parallel with another", () => {
    const [finding] = run("50k");
    expect(finding).toMatchObject({ severity: "good" });
    expect(finding?.figures[1]?.value).toBeCloseTo(50e3, -1);
  });
  it("takes a high reading as proof: 65 k means 186 k by itself, 1 / (1/65 k - 1/100 k)", () => {
    const [finding] = run("65k");
    expect(finding).toMatchObject({ severity: "replace", holds: "service" });
    expect(finding?.figures[2]?.value).toBeCloseTo(185.7e3, -3);
  });
  it("takes a reading above every other path as an open part", () => expect(run("110k")[0]?.figures[2]?.value).toBeNull());
  it("does not condemn a low reading but names what lies across: 30 k", () => {
    const [finding] = run("30k");
    expect(finding).toMatchObject({ severity: "watch", holds: "full-line" });
    expect(finding?.action).toContain("R2");
    expect(finding?.action).toContain("C1 never had leakage measured");
  });
  it("does not apply to parts measured out of circuit", () =>
    expect(
      resistorInCircuit.run(
        modelOf({
          parts: [
            { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "9 V" },
            { name: "R1", kind: "resistor", between: ["B+", "chassis"], marked: "1k", measured: { value: "3k" } },
          ],
        }),
      ),
    ).toEqual([]));
});
