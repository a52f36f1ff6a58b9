import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { siliconSupply, supplyParts } from "../../testing/supply.ts";
import { rectifierAverageCurrent } from "./rectifier-average-current.ts";

const run = (parts: ReturnType<typeof supplyParts>) => rectifierAverageCurrent.run(modelOf({ parts }));

describe("rectifier-average-current", () => {
  it("adds load and bleeder (Kirchhoff) and passes them through a 5Y3GT", () => {
    const finding = run(supplyParts({ R1: { marked: "1 Mohm 1 W" } }))[0];
    // 60 mA + about 350 V / 1 Mohm.
    expect(finding?.figures[0]?.value).toBeCloseTo(0.0604, 3);
    expect(finding).toMatchObject({ severity: "good", figures: [{ limit: 0.125 }] });
  });

  it("finds 130 mA too much for a 5Y3GT (125 mA)", () => {
    expect(run(supplyParts({ LOAD: { marked: "130 mA" } }))[0]).toMatchObject({ severity: "replace", holds: "full-line" });
  });

  it("calls more than five times the rating a short: a wire from B+ to the chassis", () => {
    const [finding] = run(supplyParts({}, [{ name: "WX", kind: "wire", between: ["B+1", "chassis"] }]));
    // 5Y3GT: 125 mA rated.
    expect(finding?.figures[0]?.value ?? 0).toBeGreaterThan(0.625);
    expect(finding).toMatchObject({ severity: "danger", holds: "current-limited" });
  });

  it("derates silicon into a capacitor by a fifth (silicon-diode-sheets): 50 mA rated is 40 mA, more than 31 mA a side", () => {
    const [one] = run(siliconSupply("silicon 2000 V 50 mA"));
    expect(one?.severity).toBe("good");
    expect(one?.figures[0]?.limit).toBeCloseTo(0.04, 9);
    expect(run(siliconSupply("silicon 2000 V 36 mA"))[0]?.severity).toBe("replace");
  });

  it("asks for an unknown rating, and does not apply without a rectifier", () => {
    expect(run(siliconSupply("silicon 2000 V"))[0]?.severity).toBe("unmeasured");
    expect(run([{ name: "R1", kind: "resistor", marked: "1 k", between: ["a", "chassis"] }])).toEqual([]);
  });
});
