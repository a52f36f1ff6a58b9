import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { resistorDissipation } from "./resistor-dissipation.ts";

const run = (marked: string, more = {}) =>
  resistorDissipation.run(
    modelOf({
      parts: [
        { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" },
        { name: "R1", kind: "resistor", between: ["B+", "chassis"], marked, ...more },
      ],
    }),
  );

describe("resistor-dissipation", () => {
  // P = V^2 / R: 300 V on 45 kohm is 2.0 W.
  it("finds an overloaded resistor and what to order", () => {
    const [finding] = run("45 kohm 1.5 W");
    expect(finding).toMatchObject({ severity: "replace", holds: "full-line", part: "R1" });
    expect(finding?.figures[0]?.value).toBeCloseTo(2, 6);
    expect(finding?.figures[0]?.margin).toBeCloseTo(-1 / 3, 6);
    expect(finding?.order?.[0]?.what).toBe("resistor 45 kohm 5 W");
  });

  it("forbids power where it bears more than twice its rating", () =>
    expect(run("45 kohm 0.5 W")[0]).toMatchObject({ severity: "danger" }));
  it("watches one above half its rating and passes one at half", () => {
    expect(run("45 kohm 3 W")[0]).toMatchObject({ severity: "watch" });
    expect(run("45 kohm 4 W")[0]).toMatchObject({ severity: "good" });
  });
  it("says nothing where no wattage is known", () => expect(run("45 kohm")).toEqual([]));
  it("leaves bleeders to their own check", () => expect(run("45 kohm 0.5 W", { role: "bleeder" })).toEqual([]));
});
