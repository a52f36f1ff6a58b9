import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts, universalParts } from "../../testing/supply.ts";
import { rectifierSwitchOnCurrent } from "./rectifier-switch-on-current.ts";

const universal = (ohms: string) =>
  rectifierSwitchOnCurrent.run(
    modelOf({
      parts: universalParts({ V1: { type: "silicon 1000 V 1 A", pins: { a: "plate", b: "B+1" } }, R1: { marked: ohms } }),
      reference: "B-",
      chassis: { isolation: "transformerless" },
    }),
  )[0];

describe("rectifier-switch-on-current", () => {
  it("passes silicon behind 33 ohm (178 V - 1 V over 33.06 ohm: 5.35 A of 30 A)", () => {
    const finding = universal("33 ohm 5 W");
    expect(finding).toMatchObject({ severity: "good", figures: [{ limit: 30 }] });
    expect(finding?.figures[0]?.value).toBeCloseTo(5.35, 1);
  });

  it("passes 7 ohm and finds 4.7 ohm too little (36 A)", () => {
    expect(universal("7 ohm 5 W")?.severity).toBe("good");
    expect(universal("4.7 ohm 5 W")).toMatchObject({ severity: "replace", holds: "full-line" });
  });

  it("warns of a short interruption with a 6X4 on a stiff winding, and only describes a 5Y3GT", () => {
    const stiff = {
      primary: { between: ["primary 1", "primary 2"] as [string, string], marked: "120 V", measured: "0.3 ohm" },
      hv: { between: ["plate 1", "chassis", "plate 2"], marked: "300-0-300 V", measured: "10 ohm" },
    };
    expect(
      rectifierSwitchOnCurrent.run(modelOf({ parts: supplyParts({ V1: { type: "6X4" }, T1: { windings: stiff } }) }))[0],
    ).toMatchObject({ severity: "watch", figures: [{ limit: 1 }] });
    expect(rectifierSwitchOnCurrent.run(modelOf({ parts: supplyParts() }))[0]?.severity).toBe("good");
  });

  it("does not apply without a rectifier", () => {
    expect(
      rectifierSwitchOnCurrent.run(modelOf({ parts: [{ name: "R1", kind: "resistor", marked: "1 k", between: ["a", "chassis"] }] })),
    ).toEqual([]);
  });
});
