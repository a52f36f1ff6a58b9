import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { siliconSupply, supplyParts, universalParts } from "../../testing/supply.ts";
import { rectifierSubstitution } from "./rectifier-substitution.ts";

const universal = (fitted: string, c1 = "40 uF 200 V electrolytic") =>
  rectifierSubstitution.run(
    modelOf({
      reference: "B-",
      chassis: { isolation: "transformerless" },
      parts: universalParts({
        V1: { type: "selenium 130 V 60 mA", pins: { a: "plate", b: "B+1" }, fitted: { type: fitted } },
        C1: { marked: c1 },
        C2: { marked: "40 uF 200 V electrolytic" },
      }),
    }),
  )[0];

describe("rectifier-substitution", () => {
  it("shows B+ before and after 5Y3GT to silicon, the capacitors beyond their rating, and the series resistor", () => {
    const model = modelOf({
      parts: supplyParts({ V1: { fitted: { type: "silicon 1000 V 1 A" } }, C1: { marked: "20 uF 400 V electrolytic" } }),
    });
    const finding = rectifierSubstitution.run(model)[0];
    expect(finding).toMatchObject({ severity: "replace", holds: "full-line" });
    expect(finding?.title).toContain("C1");
    // F14: drop of a 5Y3GT at the pulses of a 64 mA supply, (0.2 A / 353.6e-6)^(2/3) = 68 V, at the mean (0.064)^(2/3): 32 V; silicon 1 V.
    const b = finding?.figures[0];
    const before = Number(/before (\d+)/.exec(b?.label ?? "")?.[1]);
    expect((b?.value ?? 0) - before).toBeGreaterThan(25);
    expect((b?.value ?? 0) - before).toBeLessThan(68);
    // The resistor by simulating the fitted set with it: B+1 comes back to what the tube gave.
    const value = /^(\d+) ohm, (\d+) W/.exec(finding?.action ?? "");
    expect(value).not.toBeNull();
    const corrected = modelOf({
      parts: siliconSupply("silicon 1000 V 1 A", {})
        .map((part) => (part.kind === "rectifier" ? { ...part, between: [part.between?.[0] ?? "", "raw"] as [string, string] } : part))
        .concat({ name: "RS", kind: "resistor", marked: `${value?.[1]} ohm`, between: ["raw", "B+1"] }),
    });
    const solved = corrected.solve({ life: "restored", condition: "operating", line: "actual" });
    expect(solved.ok && Math.abs((solved.steady.points.get("B+1")?.meanVolts ?? 0) / before - 1)).toBeLessThan(0.03);
  });

  it("computes selenium to silicon: five plates at about 1 V (reference 10.4: 5 to 6 V), so a few volts up", () => {
    const finding = universal("silicon 1000 V 1 A");
    const b = finding?.figures[0];
    const rise = (b?.value ?? 0) - Number(/before (\d+)/.exec(b?.label ?? "")?.[1]);
    expect(rise).toBeGreaterThan(2);
    expect(rise).toBeLessThan(14);
    // Within 5 % nothing need be done; above it the resistor is named.
    const share = rise / ((b?.value ?? 0) - rise);
    expect(finding?.severity).toBe(share > 0.05 ? "adjust" : "good");
  });

  it("names an overloaded filament winding", () => {
    const model = modelOf({ parts: supplyParts({ V1: { type: "6X4", fitted: { type: "5Y3GT" } } }) });
    expect(rectifierSubstitution.run(model).map(({ title }) => title)).toContain("The other tube's heater asks more of the winding");
  });

  it("passes a replacement of the same kind, and does not apply where nothing was changed", () => {
    expect(rectifierSubstitution.run(modelOf({ parts: supplyParts({ V1: { fitted: { type: "5Y3GT" } } }) }))).toEqual([]);
    expect(rectifierSubstitution.run(modelOf({ parts: siliconSupply("silicon 1000 V 1 A") }))).toEqual([]);
  });
});
